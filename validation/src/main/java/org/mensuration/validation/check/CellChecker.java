package org.mensuration.validation.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.mensuration.formula.Gradient;
import org.mensuration.validation.table.Deviation;
import org.mensuration.validation.table.Precision;
import org.mensuration.validation.table.Range;
import org.mensuration.validation.table.Rounding;
import org.mensuration.validation.table.Table;
import org.mensuration.validation.table.TableReader;
import org.mensuration.validation.table.TableRow;

/** Compares the cells of one result column. Immutable and thread-safe. */
final class CellChecker {
  private static final MathContext SHOWN = new MathContext(12);
  private static final BigDecimal FEW_ULP = BigDecimal.valueOf(4);

  private final Table table;
  private final Binding binding;

  CellChecker(Table table, Binding binding) {
    this.table = table;
    this.binding = binding;
  }

  CellCheck check(TableRow row, BigDecimal printed) {
    double[][] values;
    List<List<BigDecimal>> inputs = binding.inputs(row.inputs());
    double value;
    try {
      for (int i = 0; i < inputs.size(); i++) {
        if (!binding.subject().parameters().get(i).list() && inputs.get(i).size() != 1) {
          return uncomputed(row, printed, "several values for an input that is no list");
        }
      }
      values = Doubles.of(inputs);
      value = binding.subject().value().applyAsDouble(values);
    } catch (IllegalArgumentException | ArithmeticException e) {
      return uncomputed(row, printed, String.valueOf(e.getMessage()));
    }
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      return uncomputed(row, printed, "the formula gives " + value);
    }
    BigDecimal computed = binding.result().times(new BigDecimal(value));
    BigDecimal noise = noise(inputs, values, value);
    Spread spread = Spread.of(binding, table.head(), inputs, computed);
    boolean tabulated = binding.subject().tabulated().test(table.head().source(), values);
    Verdict plain = plain(printed, computed, noise, spread, tabulated);
    return deviation(row)
        .map(known -> explained(row, printed, computed, noise, plain, known))
        .orElseGet(() -> cell(row, printed, computed, plain, ""));
  }

  private Verdict plain(
      BigDecimal printed, BigDecimal computed, BigDecimal noise, Spread spread, boolean tabulated) {
    Precision precision = binding.column().precision();
    Range range = precision.range(printed).widened(noise);
    boolean agrees = range.contains(computed);
    if (tabulated) {
      return agrees ? Verdict.TABULATED : Verdict.FAILED;
    }
    if (!range.meets(spread.least(), spread.most())) {
      return Verdict.FAILED;
    }
    if (spread.width().compareTo(precision.measure(printed)) > 0) {
      return Verdict.UNDECIDED;
    }
    return agrees && sameDigits(precision, printed, computed)
        ? Verdict.EQUAL_AS_PRINTED
        : Verdict.WITHIN_STEP;
  }

  /** Whether agreement means that the print itself comes out. */
  private static boolean sameDigits(Precision precision, BigDecimal printed, BigDecimal computed) {
    if (precision instanceof Precision.Printed form) {
      return form.rounding() != Rounding.UNKNOWN;
    }
    return computed.setScale(printed.scale(), RoundingMode.HALF_EVEN).compareTo(printed) == 0;
  }

  private CellCheck explained(
      TableRow row,
      BigDecimal printed,
      BigDecimal computed,
      BigDecimal noise,
      Verdict plain,
      Deviation known) {
    if (plain != Verdict.FAILED) {
      return cell(
          row, printed, computed, Verdict.FAILED, "listed as a deviation, but " + plain.words());
    }
    BigDecimal ulp = known.amount().ulp();
    if (ulp.compareTo(binding.column().precision().measure(printed)) >= 0) {
      return cell(
          row,
          printed,
          computed,
          Verdict.FAILED,
          "the listed deviation " + plain(known.amount()) + " has too few digits to assert");
    }
    BigDecimal off = printed.subtract(computed).subtract(known.amount()).abs();
    BigDecimal allowed = ulp.divide(BigDecimal.valueOf(2)).add(noise);
    if (off.compareTo(allowed) > 0) {
      return cell(
          row,
          printed,
          computed,
          Verdict.FAILED,
          "the listed deviation is "
              + plain(known.amount())
              + ", found "
              + plain(printed.subtract(computed).round(SHOWN)));
    }
    return cell(row, printed, computed, Verdict.EXPLAINED, known.reason());
  }

  private Optional<Deviation> deviation(TableRow row) {
    String place = TableReader.place(table.head(), row, binding.column());
    return table.deviations().stream().filter(d -> d.row().equals(place)).findFirst();
  }

  /**
   * What double arithmetic leaves open: a few units in the last place, and what inputs lose that no
   * double holds exactly. A column counted in units of the last place already grants the first.
   */
  private BigDecimal noise(List<List<BigDecimal>> inputs, double[][] values, double value) {
    BigDecimal noise =
        binding.column().precision() instanceof Precision.Ulps
            ? BigDecimal.ZERO
            : new BigDecimal(Math.ulp(value)).multiply(FEW_ULP);
    Optional<Gradient> gradient = binding.subject().gradient().apply(values);
    if (gradient.isPresent()) {
      int at = 0;
      for (int i = 0; i < values.length; i++) {
        for (int j = 0; j < values[i].length; j++) {
          double reach = Math.abs(gradient.get().partial(at)) * Math.ulp(values[i][j]);
          at++;
          if (inputs.get(i).get(j).compareTo(new BigDecimal(values[i][j])) != 0) {
            noise = noise.add(new BigDecimal(reach));
          }
        }
      }
    }
    return binding.result().times(noise);
  }

  private CellCheck uncomputed(TableRow row, BigDecimal printed, String why) {
    return new CellCheck(
        row,
        binding.column(),
        binding.subject().id(),
        printed,
        BigDecimal.ZERO,
        Verdict.FAILED,
        where(row) + ": printed " + plain(printed) + ", " + why);
  }

  private CellCheck cell(
      TableRow row, BigDecimal printed, BigDecimal computed, Verdict verdict, String why) {
    Precision precision = binding.column().precision();
    BigDecimal difference =
        computed.subtract(printed).abs().divide(precision.measure(printed), SHOWN);
    String message =
        where(row)
            + ": printed "
            + plain(printed)
            + ", computed "
            + plain(computed.round(SHOWN))
            + " "
            + binding.column().unit()
            + ", "
            + verdict.words()
            + (why.isEmpty() ? "" : " (" + why + ")")
            + (row.note().isEmpty() ? "" : "; note: " + row.note());
    return new CellCheck(
        row, binding.column(), binding.subject().id(), printed, difference, verdict, message);
  }

  private String where(TableRow row) {
    return table.name()
        + ", line "
        + row.line()
        + ", "
        + row.key()
        + ", "
        + binding.column().name();
  }

  private static String plain(BigDecimal value) {
    return value.toPlainString();
  }
}
