package org.loomwright.model.kit;

/**
 * A wish about one way.
 *
 * @param wish forbid or prefer
 * @param way id of the way, as the plan prints it
 * @param reason why, for the next reader
 */
public record Wish(WishKind wish, String way, String reason) {}
