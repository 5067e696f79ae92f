package org.mensuration.validation.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.mensuration.units.Measures.cubicFeet;
import static org.mensuration.units.Measures.feet;
import static org.mensuration.units.Measures.inches;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.mensuration.Catalogues;
import org.mensuration.StemForms;
import org.mensuration.formula.Formula;

/** What 31 felled black cherry trees say of the ideal solids. */
class CherryTreesTest {
  @Test
  void theyStandBetweenConeAndParaboloid() throws IOException {
    Formula solid = Catalogues.standard().formula("stem/power-solid");
    List<String> rows = Files.readAllLines(MeasuredTablesTest.FOLDER.resolve("trees76/trees.txt"));
    double lowest = 1;
    double highest = 0;
    double sum = 0;
    int below = 0;
    for (String row : rows.subList(1, rows.size())) {
      String[] cells = row.split(" ", -1);
      double dbh = Double.parseDouble(cells[0]);
      double height = Double.parseDouble(cells[1]);
      double volume = Double.parseDouble(cells[2]);
      double factor = StemForms.formFactor(cubicFeet(volume), inches(dbh), feet(height));
      double paraboloid = solid.apply(dbh * 2.54, height * 0.3048, 1) / 0.028316846592;
      double cone = solid.apply(dbh * 2.54, height * 0.3048, 2) / 0.028316846592;
      // A form factor between 1/3 and 1/2 is a volume between the two solids, and the reverse.
      assertThat(factor > 1.0 / 3).isEqualTo(volume > cone);
      assertThat(factor < 0.5).isEqualTo(volume < paraboloid);
      assertThat(volume).as(row).isLessThan(paraboloid);
      below += volume < cone ? 1 : 0;
      lowest = Math.min(lowest, factor);
      highest = Math.max(highest, factor);
      sum += factor;
    }
    assertThat(rows).hasSize(32);
    assertThat(below).as("trees thinner than a cone on breast height").isEqualTo(3);
    // Worked out with 25 digits from the same 31 rows.
    assertThat(lowest).isCloseTo(0.3242516707258881, within(1e-15));
    assertThat(highest).isCloseTo(0.439849394498057, within(1e-15));
    assertThat(sum / 31).isCloseTo(0.384895390910569, within(1e-14));
  }
}
