package org.loomwright.store;

/**
 * A kept picture, without its bytes.
 *
 * @param hash SHA-256 of its bytes, lower-case hexadecimal: its name in the store
 * @param mediaType "image/png" or "image/jpeg"
 * @param widthPx width, px
 * @param heightPx height, px
 */
public record Blob(String hash, String mediaType, int widthPx, int heightPx) {}
