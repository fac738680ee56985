using System.Diagnostics;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Training;

/// <summary>Learns all that the reader knows beyond its words: what talk sounds like, what each choice goes by, what a whole
/// reading goes by, and when a finding is in doubt. The same notes give the same file, byte for byte.</summary>
internal sealed class ReaderTrainer(TrainingSet set, TextWriter log, double strength = ReaderTrainer.UsualStrength)
{
    /// <summary>How strongly the weights of choices are held to nothing.</summary>
    public const double UsualStrength = 3;

    private const int Rounds = 2;
    private const int Some = 3; // a third of the notes is enough for the first search to go by

    /// <summary>What was learned, as a file.</summary>
    public byte[] Train()
    {
        var talk = new TalkTraining(set).Train(log);
        var choices = new ChoiceTraining(set, strength);
        var weights = FirstWeights.All();
        for (var round = 0; round < Rounds; round++)
        {
            choices.Align(weights, round == 0 ? Some : 1, log);
            weights = choices.Fit(null, round == 0 ? null : weights, log);
        }

        var folds = Enumerable.Range(0, TrainingSet.Folds).Select(fold => ModelTables.Of(choices.Fit(fold, null, log))).ToArray();
        Unreached = [.. choices.Unreached];
        choices.Forget();
        var readings = Readings(folds);
        var wholes = new WholeTraining(set, readings, weights.Keys, log);
        var (whole, foldWholes) = wholes.Train();
        var doubt = new DoubtTraining(set, readings, [.. foldWholes.Select(ModelTables.Of)], log);
        var (doubts, reading, other) = doubt.Train();
        Outcomes = doubt.Outcomes;
        return ReaderModelFile.Write([weights, whole, talk, doubts], set.Words, reading, other);
    }

    // How each note may be read by what the other parts taught.
    private IReadOnlyList<Interpretation>[] Readings(WeightTable[] folds)
    {
        var clock = Stopwatch.StartNew();
        var readings = new IReadOnlyList<Interpretation>[set.Count];
        Parallel.For(0, set.Count, Workers.Options, at => readings[at] = new Decoder(folds[set.Parts[at]]).Read(set.Notes[at]));
        log.WriteLine($"read by what the others taught ({clock.Elapsed.TotalSeconds:0} s)");
        return readings;
    }

    /// <summary>The notes to whose meaning no way leads.</summary>
    public IReadOnlyList<int> Unreached { get; private set; } = [];

    /// <summary>What each note was read as by what the others taught.</summary>
    public IReadOnlyList<Outcome?> Outcomes { get; private set; } = [];
}

/// <summary>Weights as the reader looks them up, rounded as in the file.</summary>
internal static class ModelTables
{
    public static WeightTable Of(IReadOnlyDictionary<uint, double> weights) =>
        new([.. weights.Where(weight => Math.Abs(weight.Value) >= 0.0005).OrderBy(weight => weight.Key).Select(weight => KeyValuePair.Create(weight.Key, (float)weight.Value))]);
}
