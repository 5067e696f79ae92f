package org.mensuration.internal.formula;

import java.util.List;
import org.mensuration.formula.Equation;
import org.mensuration.formula.Nature;
import org.mensuration.formula.Parameter;
import org.mensuration.formula.Relation;
import org.mensuration.formula.Result;
import org.mensuration.source.Citation;

/** Everything that is said about one formula. Immutable and thread-safe. */
record Facts(
    String id,
    String title,
    Nature nature,
    List<Parameter> parameters,
    List<Relation> relations,
    Result result,
    Equation equation,
    List<Citation> citations,
    List<String> notes) {}
