package org.loomwright.model.design;

import java.math.BigDecimal;

/**
 * One line of a parts list.
 *
 * @param part part number
 * @param name name for people
 * @param quantity quantity for one kit, without attrition
 * @param unit "pc" or "m"
 * @param buy quantity to buy, with attrition
 * @param unitPrice price of one unit
 * @param total price of the quantity to buy, rounded to cents
 * @param currency currency
 */
public record PartLine(
    String part,
    String name,
    double quantity,
    String unit,
    double buy,
    BigDecimal unitPrice,
    BigDecimal total,
    String currency) {}
