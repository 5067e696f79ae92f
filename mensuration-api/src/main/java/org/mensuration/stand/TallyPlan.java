package org.mensuration.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.mensuration.edge.EdgeRule;
import org.mensuration.gauge.CountChoices;
import org.mensuration.gauge.TreeSelection;
import org.mensuration.quantity.Physical;

/**
 * What a tally counts and by which choices; all of them are printed beside the figures. Immutable
 * and thread-safe.
 *
 * @param selection the gauge or the plots
 * @param choices which stems count besides living single ones
 * @param layout how the points were chosen
 * @param diameters how noted diameters are used
 * @param smallestDiameter trees below it are not counted but reported; empty for no limit
 * @param classes diameter classes of the stand table; empty for no table
 * @param group what the stand table tells apart besides diameter classes
 * @param edges the rule by which the crew recorded edge weights, or {@link EdgeRule#EXTENDED_GRID}
 *     for points inside and beyond the edge; {@link EdgeRule#NONE} asks for no correction, and
 *     weights that are noted count all the same
 * @param densityBySummation whether Reineke's index is added up tree by tree
 */
public record TallyPlan(
    TreeSelection selection,
    CountChoices choices,
    SampleLayout layout,
    DiameterUse diameters,
    Optional<Quantity<Length>> smallestDiameter,
    Optional<DiameterClasses> classes,
    TableGroup group,
    EdgeRule edges,
    boolean densityBySummation) {

  /**
   * Checks that nothing is null and that the rule for edges is one for field work.
   *
   * @param selection the gauge or the plots
   * @param choices which stems count
   * @param layout how the points were chosen
   * @param diameters how noted diameters are used
   * @param smallestDiameter trees below it are not counted
   * @param classes diameter classes of the stand table
   * @param group what the stand table tells apart besides them
   * @param edges the rule by which edge weights were recorded
   * @param densityBySummation whether Reineke's index is added up tree by tree
   * @throws IllegalArgumentException if the rule for edges needs a map
   */
  public TallyPlan {
    Objects.requireNonNull(selection, "selection");
    Objects.requireNonNull(choices, "choices");
    Objects.requireNonNull(layout, "layout");
    Objects.requireNonNull(diameters, "diameters");
    Objects.requireNonNull(smallestDiameter, "smallestDiameter");
    Objects.requireNonNull(classes, "classes");
    Objects.requireNonNull(group, "group");
    if (Objects.requireNonNull(edges, "edges") == EdgeRule.TOROIDAL) {
      throw new IllegalArgumentException(
          edges.words()
              + " has no weight that a crew could record; count with it on a map with the boundary,"
              + " or record weights by walkthrough or mirage");
    }
  }

  /**
   * The usual choices: each living stem counts by its diameter as noted, points at random, no
   * smallest diameter, no stand table.
   *
   * @param selection the gauge or the plots
   * @return the plan
   */
  public static TallyPlan of(TreeSelection selection) {
    return new TallyPlan(
        selection,
        CountChoices.STANDARD,
        SampleLayout.RANDOM,
        DiameterUse.AS_RECORDED,
        Optional.empty(),
        Optional.empty(),
        TableGroup.SPECIES,
        EdgeRule.NONE,
        false);
  }

  /**
   * The same plan with other choices of stems.
   *
   * @param newChoices which stems count
   * @return a new plan
   */
  public TallyPlan with(CountChoices newChoices) {
    return new TallyPlan(
        selection,
        newChoices,
        layout,
        diameters,
        smallestDiameter,
        classes,
        group,
        edges,
        densityBySummation);
  }

  /**
   * The same plan for points chosen in another way.
   *
   * @param newLayout how the points were chosen
   * @return a new plan
   */
  public TallyPlan with(SampleLayout newLayout) {
    return new TallyPlan(
        selection,
        choices,
        newLayout,
        diameters,
        smallestDiameter,
        classes,
        group,
        edges,
        densityBySummation);
  }

  /**
   * The same plan with another use of noted diameters.
   *
   * @param newUse how noted diameters are used
   * @return a new plan
   */
  public TallyPlan with(DiameterUse newUse) {
    return new TallyPlan(
        selection,
        choices,
        layout,
        newUse,
        smallestDiameter,
        classes,
        group,
        edges,
        densityBySummation);
  }

  /**
   * The same plan with a smallest diameter.
   *
   * @param smallest trees below it are not counted but reported
   * @return a new plan
   */
  public TallyPlan fromDiameter(Quantity<Length> smallest) {
    return new TallyPlan(
        selection,
        choices,
        layout,
        diameters,
        Optional.of(smallest),
        classes,
        group,
        edges,
        densityBySummation);
  }

  /**
   * The same plan with a stand table by diameter class and species.
   *
   * @param newClasses the classes
   * @return a new plan
   */
  public TallyPlan tabulatedBy(DiameterClasses newClasses) {
    return tabulatedBy(newClasses, TableGroup.SPECIES);
  }

  /**
   * The same plan with a stand table by diameter class and another grouping.
   *
   * @param newClasses the diameter classes
   * @param newGroup what is told apart besides them
   * @return a new plan
   */
  public TallyPlan tabulatedBy(DiameterClasses newClasses, TableGroup newGroup) {
    return new TallyPlan(
        selection,
        choices,
        layout,
        diameters,
        smallestDiameter,
        Optional.of(newClasses),
        newGroup,
        edges,
        densityBySummation);
  }

  /**
   * The same plan for counts whose edge weights were recorded by a rule, or with points beyond the
   * edge. An estimate is refused if trees were counted and none of them carries a recorded weight,
   * be it 1, and with the extended grid if no point lies beyond the edge.
   *
   * @param rule walkthrough, mirage or extended grid; {@link EdgeRule#NONE} asks for no correction
   * @return a new plan
   * @throws IllegalArgumentException if the rule needs a map
   */
  public TallyPlan with(EdgeRule rule) {
    return new TallyPlan(
        selection,
        choices,
        layout,
        diameters,
        smallestDiameter,
        classes,
        group,
        rule,
        densityBySummation);
  }

  /**
   * The same plan with Reineke's index added up tree by tree, which costs a power a tree.
   *
   * @return a new plan
   */
  public TallyPlan withDensityBySummation() {
    return new TallyPlan(
        selection, choices, layout, diameters, smallestDiameter, classes, group, edges, true);
  }

  /**
   * The choices and cautions in words, to be printed beside the figures.
   *
   * @return one line each
   */
  public List<String> text() {
    List<String> lines = new ArrayList<>(choices.text());
    lines.add(diameters.text());
    lines.add(
        smallestDiameter.isPresent()
            ? "smallest diameter counted: " + smallestDiameter.get()
            : "no smallest diameter");
    if (classes.isPresent()) {
      lines.add(
          "diameter classes of "
              + classes.get().width()
              + " from "
              + classes.get().origin()
              + ", "
              + (classes.get().closedEnd() == DiameterClasses.ClosedEnd.LOWER ? "lower" : "upper")
              + " limit included");
      lines.add("table by " + group.text());
    }
    lines.add(edgesText());
    layout.caution().ifPresent(lines::add);
    return List.copyOf(lines);
  }

  private String edgesText() {
    String caution = edges.caution().isEmpty() ? "" : ", which " + edges.caution();
    return switch (edges) {
      case NONE -> "edges: no rule; weights count as noted";
      case EXTENDED_GRID -> "edges: " + edges.words() + caution;
      default -> "edge weights recorded by " + edges.words() + caution;
    };
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TallyPlan plan
        && selection.equals(plan.selection)
        && choices.equals(plan.choices)
        && layout == plan.layout
        && diameters == plan.diameters
        && Physical.same(smallestDiameter, plan.smallestDiameter)
        && classes.equals(plan.classes)
        && group == plan.group
        && edges == plan.edges
        && densityBySummation == plan.densityBySummation;
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        selection,
        choices,
        layout,
        diameters,
        Physical.hash(smallestDiameter),
        classes,
        group,
        edges,
        densityBySummation);
  }
}
