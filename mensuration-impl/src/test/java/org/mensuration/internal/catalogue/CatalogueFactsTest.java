package org.mensuration.internal.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.mensuration.Catalogues;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Formula;
import org.mensuration.formula.Parameter;
import org.mensuration.internal.formula.BoundFormula;
import org.mensuration.source.Role;

/** What every formula must say about itself. Reads class files, so it is no test for a mutant. */
@Tag("catalogue")
class CatalogueFactsTest {
  @Test
  void everyConstantIsListed() throws IllegalAccessException, ClassNotFoundException {
    List<String> constants = new ArrayList<>();
    for (JavaClass topic :
        new ClassFileImporter().importPackages("org.mensuration.internal.catalogue")) {
      if (!topic.getSimpleName().endsWith("Formulas")) {
        continue;
      }
      for (Field field : Class.forName(topic.getName()).getFields()) {
        if (field.getType() == BoundFormula.class) {
          constants.add(((BoundFormula) field.get(null)).id());
        }
      }
    }
    assertThat(constants).doesNotHaveDuplicates().isNotEmpty();
    assertThat(Catalogues.standard().formulas().stream().map(Formula::id))
        .containsExactlyInAnyOrderElementsOf(constants);
  }

  @Test
  void everyFormulaIsDefinedSomewhere() {
    for (Formula formula : Catalogues.standard().formulas()) {
      assertThat(formula.citations()).as(formula.id()).anyMatch(c -> c.role() == Role.DEFINES);
      assertThat(formula.citations().get(0).role()).as(formula.id()).isEqualTo(Role.DEFINES);
      assertThat(formula.id()).matches("[a-z]+(-[a-z]+)*/[a-z0-9]+(-[a-z0-9]+)*");
    }
  }

  @Test
  void everySymbolOfAnEquationIsDeclared() {
    for (Formula formula : Catalogues.standard().formulas()) {
      Set<String> known = new HashSet<>();
      for (Parameter parameter : formula.parameters()) {
        assertThat(known.add(parameter.symbol())).as(formula.id()).isTrue();
      }
      Set<String> used = new HashSet<>();
      collect(formula, formula.equation(), known, used);
      if (!formula.solved()) {
        for (Parameter parameter : formula.parameters()) {
          assertThat(used).as(formula.id() + " uses every input").contains(parameter.symbol());
        }
      }
    }
  }

  private static void collect(Formula formula, Equation node, Set<String> known, Set<String> used) {
    if (node instanceof Equation.Symbol symbol) {
      assertThat(known).as(formula.id()).contains(symbol.name());
      used.add(symbol.name());
    } else if (node instanceof Equation.Where where) {
      collect(formula, where.value(), known, used);
      collect(formula, where.in(), with(known, where.symbol()), used);
    } else if (node instanceof Equation.IndexSum sum) {
      collect(formula, sum.from(), known, used);
      collect(formula, sum.to(), known, used);
      collect(formula, sum.term(), with(known, sum.index()), used);
    } else if (node instanceof Equation.ReadingSum sum) {
      assertThat(known).as(formula.id()).containsAll(sum.lists());
      collect(formula, sum.term(), known, used);
    } else if (node instanceof Equation.ReadingCount count) {
      assertThat(known).as(formula.id()).contains(count.list());
      used.add(count.list());
    } else {
      for (Equation child : children(node)) {
        collect(formula, child, known, used);
      }
    }
  }

  private static Set<String> with(Set<String> known, String symbol) {
    Set<String> more = new HashSet<>(known);
    more.add(symbol);
    return more;
  }

  static List<Equation> children(Equation node) {
    List<Equation> children = new ArrayList<>();
    if (node instanceof Equation.Where where) {
      children.add(where.value());
      children.add(where.in());
    } else if (node instanceof Equation.Sum sum) {
      children.addAll(sum.terms());
    } else if (node instanceof Equation.Product product) {
      children.addAll(product.factors());
    } else if (node instanceof Equation.Negative negative) {
      children.add(negative.value());
    } else if (node instanceof Equation.Quotient quotient) {
      children.add(quotient.numerator());
      children.add(quotient.denominator());
    } else if (node instanceof Equation.Power power) {
      children.add(power.base());
      children.add(power.exponent());
    } else if (node instanceof Equation.Root root) {
      children.add(root.radicand());
    } else if (node instanceof Equation.Function function) {
      children.addAll(function.arguments());
    } else if (node instanceof Equation.Rounded rounded) {
      children.add(rounded.value());
    } else if (node instanceof Equation.LookUp lookUp) {
      children.addAll(lookUp.keys());
    } else if (node instanceof Equation.Cases cases) {
      for (Equation.Branch branch : cases.branches()) {
        children.add(branch.when().left());
        children.add(branch.when().right());
        children.add(branch.then());
      }
      children.add(cases.otherwise());
    }
    return children;
  }
}
