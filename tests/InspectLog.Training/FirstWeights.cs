using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Training;

/// <summary>The few weights the first search goes by: the nearest name and the nearest places are meant, and what was spoken of
/// goes on. Nothing of them is left in what is learned.</summary>
internal static class FirstWeights
{
    private const int Places = 8;

    public static Dictionary<uint, double> All()
    {
        var weights = new Dictionary<uint, double>();
        foreach (var kind in new[] { EventKind.Value, EventKind.Condition, EventKind.Action, EventKind.Answer })
        {
            Add(kind == EventKind.Answer ? 1 : -2.5, (int)kind, Feature.Drop);
            for (var subject = 0; subject < 2; subject++)
            {
                Add(1.5 + subject * 0.5, (int)kind, Feature.NameBoundary, subject, (int)Boundary.None);
                Add(1, (int)kind, Feature.NameBoundary, subject, (int)Boundary.Clause);
                Add(1.2, (int)kind, Feature.NameBoundary, 2 + subject, (int)Boundary.None);
            }

            Add(2, Places, Feature.GroupBoundary, 0, (int)Boundary.None, (int)kind);
            Add(-1, Places, Feature.GroupBoundary, 0, (int)Boundary.Sentence, (int)kind);
            Add(-1, Places, Feature.GroupBoundary, 4, (int)Boundary.Clause, (int)kind);
            Add(-2, Places, Feature.GroupBoundary, 4, (int)Boundary.Sentence, (int)kind);
        }

        Add(2, (int)EventKind.Value, Feature.Source, (int)UnitSource.Said);
        Add(1, (int)EventKind.Value, Feature.Source, (int)UnitSource.Shown);
        Add(1, (int)EventKind.Value, Feature.NextUnit, 1, (int)Boundary.None);
        foreach (var kind in new[] { Quantifier.Numbers, Quantifier.All })
        {
            Add(2, Places, Feature.GroupKind, 0, (int)kind);
            Add(1.5, Places, Feature.GroupKind, 4, (int)kind);
        }

        Add(3, Places, Feature.GroupKind, 0, (int)Quantifier.Rest, 1);
        Add(3, Places, Feature.GroupKind, 4, (int)Quantifier.Rest, 1);
        for (var side = 0; side < 2; side++)
        {
            Add(1, Places, Feature.GroupDistance, side, 0);
            Add(1, Places, Feature.GroupDistance, side, 1);
        }

        Add(1, Places, Feature.RememberedSame, 1, 0, 1);
        Add(-1, Places, Feature.AllOrNone, 1);
        Add(-1, Places, Feature.AllOrNone, 2);
        Add(-1, Places, Feature.Union);
        Add(-0.5, Places, Feature.RememberedAll);
        return weights;

        void Add(double weight, int scope, Feature feature, int a = 0, int b = 0, int c = 0) => weights[FeatureList.Key(scope, feature, a, b, c)] = weight;
    }
}
