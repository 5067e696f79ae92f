package org.mensuration.internal.catalogue;

import static org.mensuration.formula.Equations.lookUp;
import static org.mensuration.formula.Equations.sym;

import java.util.List;
import org.mensuration.formula.Domain;
import org.mensuration.formula.Nature;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.internal.formula.Definition;
import org.mensuration.internal.source.ConventionWorks;
import org.mensuration.internal.table.RuleTable;
import org.mensuration.source.Citation;
import org.mensuration.source.Role;

/** Log rules that are nothing but a printed table. Immutable and thread-safe. */
public final class LogTableFormulas {
  /** The cells of GOST 2708-75 that were read. */
  public static final RuleTable GOST2708_TABLE = RuleTable.read("gost2708.csv");

  /** GOST 2708-75. */
  public static final BoundFormula GOST2708 =
      Definition.of("log/gost2708", "GOST 2708-75", Nature.CONVENTION)
          .input(
              "small_diameter",
              "d",
              "cm",
              Domain.closed(3, 120),
              Domain.closed(10, 38),
              "diameter of the top end, an even class from 14 cm")
          .input(
              "length",
              "L",
              "m",
              Domain.closed(1, 9.5),
              Domain.closed(1, 8.5),
              "length of the log, a class of half a metre")
          .gives("volume", "V", "m3", lookUp(GOST2708_TABLE, sym("d"), sym("L")))
          .definedBy(ConventionWorks.GOST2708_COPY_A, "table 1, extract, 14-38 cm, 1-8.5 m")
          .definedBy(ConventionWorks.GOST2708_COPY_B, "table 1, extract, 10 and 12 cm, 3-8 m")
          .tabulatedBy(ConventionWorks.GOST2708_COPY_C, "tables 1 and 3, extract")
          .explainedBy(ConventionWorks.GOST2708_SCOPE, "scope paragraphs")
          .cites(
              Citation.fromMemory(
                  Role.EXPLAINS,
                  ConventionWorks.GOST2292_JAS,
                  "GOST 2292-88: whole cm up to 13 cm, even cm from 14 cm"))
          .note("the standard gives no formula; a cell that is not printed is refused")
          .note("table 1 of the standard covers 3-120 cm and 1-9.5 m; 230 of its cells were read")
          .note(
              "tables 2 and 3, of 0.5-0.9 m and of 10-13.5 m, were not read; a longer log is the sum"
                  + " of two nearly equal parts")
          .note(
              "copies B and C print the same figures as copy A in the 115 cells that they share"
                  + " with it; 14 cm 2 m and 16 cm 1.5 m stand out from their neighbours and are"
                  + " suspect")
          .kernel2(GOST2708_TABLE::value);

  /** The topic. */
  public static final List<BoundFormula> ALL = List.of(GOST2708);

  private LogTableFormulas() {}
}
