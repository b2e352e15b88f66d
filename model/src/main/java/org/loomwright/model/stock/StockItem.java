package org.loomwright.model.stock;

import java.util.Optional;

/**
 * One kit that was made.
 *
 * @param serial serial number printed on it
 * @param state where it has gone
 * @param job job it was fitted in
 * @param note to whom it was sold, why it was scrapped
 */
public record StockItem(
    String serial, StockState state, Optional<String> job, Optional<String> note) {}
