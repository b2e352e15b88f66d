package org.loomwright.model.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A sum of money such as "0.42 EUR": a plain number, then a currency code of ISO 4217, except AWG,
 * which is a wire size here. Kept as a decimal, never as a binary fraction.
 *
 * <p>Sums of different currencies have no order, so there is none.
 *
 * @param text as written
 * @param amount zero or more, with as many decimals as written
 * @param currency three capital letters
 */
public record Money(String text, BigDecimal amount, String currency) {

  private static final Set<String> CURRENCIES = currencies();

  /** Refuses an amount or a currency that is not what the text says. */
  public Money {
    Parts parts = read(text);
    if (!parts.amount.equals(amount) || !parts.currency.equals(currency)) {
      throw new IllegalArgumentException(
          "\"" + text + "\" does not say " + amount + " " + currency);
    }
  }

  /**
   * Reads a text.
   *
   * @throws QuantityException if it can't be read as a sum of money
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static Money of(String text) {
    Parts parts = read(text);
    return new Money(text, parts.amount, parts.currency);
  }

  /**
   * Writes an amount with its decimals.
   *
   * @throws QuantityException if the amount is negative or too long, or the currency is not known
   */
  public static Money of(BigDecimal amount, String currency) {
    // Guards against a scale that would print millions of zeros.
    if (Math.abs((long) amount.scale()) > 100 || amount.precision() > 100) {
      throw new QuantityException(
          amount + " " + currency,
          0,
          UnitKind.MONEY.noun(),
          "the number has too many digits",
          QuantityReader.quoted(UnitKind.MONEY.example()));
    }
    return of(amount.toPlainString() + " " + currency);
  }

  /** The text as written. */
  @JsonValue
  @Override
  public String text() {
    return text;
  }

  @Override
  public String toString() {
    return text;
  }

  private record Parts(BigDecimal amount, String currency) {}

  private static Parts read(String text) {
    Cursor cursor = new Cursor(text, UnitKind.MONEY);
    cursor.begin();
    int start = cursor.at();
    boolean negative = cursor.sign();
    BigDecimal amount = NumberReader.read(cursor).numerator();
    if (negative && amount.signum() != 0) {
      throw cursor.fail(
          start,
          "a sum of money must not be negative",
          QuantityReader.quoted(UnitKind.MONEY.example()));
    }
    cursor.spaces();
    int codeAt = cursor.at();
    String code = cursor.token();
    if (!isCurrency(code)) {
      throw cursor.fail(
          codeAt,
          code.isEmpty()
              ? "the currency is missing"
              : QuantityReader.quoted(code)
                  + " is not a currency code of ISO 4217 that is used here",
          code.length() == 3 && isCurrency(code.toUpperCase(Locale.ROOT))
              ? QuantityReader.quoted(code.toUpperCase(Locale.ROOT))
              : "three capital letters, such as "
                  + QuantityReader.quoted(UnitKind.MONEY.example()));
    }
    cursor.moveTo(codeAt + code.length());
    if (!cursor.atEndAfterSpaces()) {
      throw cursor.leftOver();
    }
    return new Parts(amount, code);
  }

  private static boolean isCurrency(String code) {
    return CURRENCIES.contains(code);
  }

  private static Set<String> currencies() {
    Set<String> codes =
        Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .collect(Collectors.toSet());
    // The code of the Aruban florin; here it can only be a wire size in the wrong place.
    codes.remove("AWG");
    return Set.copyOf(codes);
  }
}
