using InspectLog.Dictation.Understanding;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Training;

/// <summary>Learns how sure a finding is, and from which probability on it may stand unmarked, on readings by what the other
/// parts of the corpus taught.</summary>
internal sealed class DoubtTraining(TrainingSet set, IReadOnlyList<Interpretation>[] readings, WeightTable[] wholes, TextWriter log)
{
    private const double Strength = 1;
    private const int Rounds = 100;
    private const double MostWrongReadings = 0.01;
    private const double MostWrongOthers = 0.02;
    private const int Steps = 100;

    private sealed record Judged(int Note, bool IsReading, RealFeatures Features, bool Right, double Weight);

    public IReadOnlyList<Outcome?> Outcomes { get; private set; } = [];

    public (Dictionary<uint, double> Weights, double Reading, double Other) Train()
    {
        var outcomes = new Outcome?[set.Count];
        Parallel.For(0, set.Count, Workers.Options, at =>
        {
            if (readings[at].Count > 0)
            {
                outcomes[at] = Interpreter.Likeliest(readings[at], wholes[set.Parts[at]]);
            }
        });
        Outcomes = outcomes;
        var judged = outcomes.SelectMany(Judge).ToList();
        var weights = new LogLinear([.. judged.Select(one => new[] { Lesson(one) })], 3, Strength).Fit(Rounds);
        var table = ModelTables.Of(weights);
        return (weights, Threshold(judged, table, readings: true, MostWrongReadings), Threshold(judged, table, readings: false, MostWrongOthers));
    }

    private IEnumerable<Judged> Judge(Outcome? outcome, int at) => outcome is null ? [] : Judge(set.Meant[at], outcome).Select(one =>
        new Judged(at, one.Belief.Claim.Kind == FindingKind.Reading, DoubtFeatures.Of(outcome, one.Belief), one.Right, 1 / Math.Sqrt(outcome.Beliefs.Count)));

    /// <summary>What was found in a note, and whether it is right.</summary>
    public static IEnumerable<(Belief Belief, bool Right)> Judge(TrainingNote note, Outcome outcome)
    {
        var left = note.Findings.ToList();
        foreach (var belief in outcome.Beliefs)
        {
            var meant = left.FindIndex(one => one.Place == belief.Place && TrainingGoal.Same(one.Claim, belief.Claim));
            if (meant >= 0)
            {
                left.RemoveAt(meant);
            }

            yield return (belief, meant >= 0);
        }
    }

    private static Lesson Lesson(Judged one) => new([WholeTraining.Merged(one.Features), []], [one.Right, !one.Right], one.Weight);

    // The least probability from which on few enough are wrong, of notes as they were said.
    private double Threshold(List<Judged> judged, WeightTable weights, bool readings, double most)
    {
        var some = judged.Where(one => one.IsReading == readings && !set.Meant[one.Note].Id.Contains("-n", StringComparison.Ordinal))
            .Select(one => (Sure: Probabilities.Logistic(weights.Sum(one.Features)), one.Right)).ToList();
        var step = Enumerable.Range(Steps / 2, Steps / 2).FirstOrDefault(step => some.Count(one => one.Sure >= (double)step / Steps && !one.Right) <= most * some.Count, Steps - 1);
        foreach (var at in new[] { 50, 70, 80, 85, 90, 94, 97, step })
        {
            var wrong = (double)some.Count(one => one.Sure >= (double)at / Steps && !one.Right) / some.Count;
            var marked = (double)some.Count(one => one.Sure < (double)at / Steps && one.Right) / some.Count(one => one.Right);
            log.WriteLine($"  {(readings ? "readings" : "others")} from {at} %: wrong unmarked {wrong:P2}, right marked {marked:P1}");
        }

        return (double)step / Steps;
    }
}
