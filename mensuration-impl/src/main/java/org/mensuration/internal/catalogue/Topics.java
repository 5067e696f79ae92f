package org.mensuration.internal.catalogue;

import java.util.ArrayList;
import java.util.List;
import org.mensuration.formula.Catalogue;
import org.mensuration.internal.formula.BoundFormula;

/** Joins the topics. Immutable and thread-safe. */
public final class Topics {
  /** Every formula, topic by topic. */
  public static final Catalogue CATALOGUE = Catalogue.of(all());

  private Topics() {}

  private static List<BoundFormula> all() {
    List<BoundFormula> all = new ArrayList<>();
    all.addAll(OpticsFormulas.ALL);
    all.addAll(OpticalRatioFormulas.ALL);
    all.addAll(SilhouetteFormulas.ALL);
    all.addAll(SightedDiameterFormulas.ALL);
    all.addAll(ImageFormulas.ALL);
    all.addAll(SightingPlanFormulas.ALL);
    all.addAll(DiameterFormulas.ALL);
    all.addAll(OvalSectionFormulas.ALL);
    all.addAll(CircleFitFormulas.ALL);
    all.addAll(HeightFormulas.ALL);
    all.addAll(HeightSightFormulas.ALL);
    all.addAll(HeightErrorFormulas.ALL);
    all.addAll(CosineErrorFormulas.ALL);
    all.addAll(TwoStationFormulas.ALL);
    all.addAll(MeasurementErrorFormulas.ALL);
    all.addAll(LogFormulas.ALL);
    all.addAll(LogTableFormulas.ALL);
    all.addAll(SectionFormulas.ALL);
    all.addAll(BiasFormulas.ALL);
    all.addAll(SectionBiasFormulas.ALL);
    all.addAll(ConversionFormulas.ALL);
    all.addAll(BarkBySpeciesFormulas.ALL);
    all.addAll(BarkFormulas.ALL);
    all.addAll(Gb4814Formulas.ALL);
    all.addAll(SmallEndFormulas.ALL);
    all.addAll(MiddleFormulas.ALL);
    all.addAll(RecalledFormulas.ALL);
    all.addAll(GirthFormulas.ALL);
    all.addAll(BoardFormulas.ALL);
    all.addAll(PolynomialBoardFormulas.ALL);
    all.addAll(BoardTableFormulas.ALL);
    all.addAll(DeductionFormulas.ALL);
    all.addAll(GaugeFormulas.ALL);
    all.addAll(GaugeDeviceFormulas.ALL);
    all.addAll(PlotFormulas.ALL);
    all.addAll(PlotLayoutFormulas.ALL);
    all.addAll(CountFormulas.ALL);
    all.addAll(TreeVolumeFormulas.ALL);
    all.addAll(StandFormulas.ALL);
    all.addAll(DominantFormulas.ALL);
    all.addAll(SamplingFormulas.ALL);
    all.addAll(StemFormFormulas.ALL);
    all.addAll(StemVolumeFormulas.ALL);
    all.addAll(VolumeEquationFormulas.ALL);
    all.addAll(StemSamplingFormulas.ALL);
    all.addAll(TaperFormulas.ALL);
    all.addAll(TaperVolumeFormulas.ALL);
    all.addAll(VariableExponentFormulas.ALL);
    all.addAll(EstimationFormulas.ALL);
    all.addAll(EdgeFormulas.ALL);
    all.addAll(HeightCurveFormulas.ALL);
    all.addAll(LineFormulas.ALL);
    all.addAll(SpacingFormulas.ALL);
    all.addAll(SurveyFormulas.ALL);
    all.addAll(SummaryFormulas.ALL);
    all.addAll(RelativeDensityFormulas.ALL);
    all.addAll(FieldRuleFormulas.ALL);
    all.addAll(CombinedErrorFormulas.ALL);
    all.addAll(SampleSizeFormulas.ALL);
    return all;
  }
}
