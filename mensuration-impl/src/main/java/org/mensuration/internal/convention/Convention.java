package org.mensuration.internal.convention;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.mensuration.formula.Formula;
import org.mensuration.log.CubicConvention;
import org.mensuration.log.LogReadings;
import org.mensuration.log.RoundingStep;
import org.mensuration.quantity.BarkBasis;
import org.mensuration.quantity.LogScale;
import org.mensuration.source.Citation;
import org.mensuration.units.Measures;

/** A scale rule with its roundings. Immutable and thread-safe. */
public final class Convention implements CubicConvention {
  private static final String CUBIC_METRES = "m3";

  private final RuleFacts facts;
  private final Sizing sizing;

  Convention(RuleFacts facts, Sizing sizing) {
    this.facts = facts;
    this.sizing = sizing;
  }

  @Override
  public String name() {
    return facts.name();
  }

  @Override
  public Formula formula() {
    return facts.formula();
  }

  @Override
  public List<String> roundings() {
    List<String> words = new ArrayList<>();
    if (!facts.length().isNone()) {
      words.add("length " + facts.length().words(facts.lengthUnit()));
    }
    words.addAll(sizing.roundings());
    if (!facts.amount().isNone()) {
      words.add("result " + facts.amount().words(facts.amountUnit()));
    }
    return List.copyOf(words);
  }

  @Override
  public List<Citation> citations() {
    return facts.citations();
  }

  @Override
  public LogScale scale(LogReadings readings) {
    BarkBasis basis = facts.basis(readings.bark());
    double amount = amount(readings, new StepLog(facts));
    return new LogScale(facts.name(), amount, facts.amountUnit(), basis);
  }

  @Override
  public List<RoundingStep> steps(LogReadings readings) {
    facts.basis(readings.bark());
    StepLog log = new StepLog(facts);
    amount(readings, log);
    return log.steps();
  }

  private double amount(LogReadings readings, StepLog log) {
    double read = facts.read(readings.length());
    double length = log.reading("length", "L", facts.length(), read, facts.lengthUnit());
    double amount = sizing.amount(facts, readings, length, log);
    return log.amount("result", facts.amount(), amount, facts.amountUnit());
  }

  @Override
  public Quantity<Volume> takenAsVolume(LogScale scale) {
    if (!scale.rule().equals(facts.name())
        || !scale.unit().equals(facts.amountUnit())
        || !scale.unit().equals(CUBIC_METRES)) {
      throw new IllegalArgumentException(
          "cannot take " + scale + " as a volume by " + facts.name() + " in " + CUBIC_METRES);
    }
    return Measures.cubicMetres(scale.amount());
  }

  @Override
  public String toString() {
    return facts.name();
  }
}
