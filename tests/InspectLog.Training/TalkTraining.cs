using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Training;

/// <summary>Learns what talk sounds like. Each note is then judged by what the other parts of the corpus teach, as a new one
/// will be.</summary>
internal sealed class TalkTraining(TrainingSet set)
{
    private const int Least = 3;
    private const double Strength = 1;
    private const int Rounds = 60;

    public Dictionary<uint, double> Train(TextWriter log)
    {
        var lessons = set.Notes.Select((note, at) => Lesson(TalkFeatures.Of(note, 0, note.Length), set.Meant[at].Findings.Count == 0)).ToList();
        var right = 0;
        for (var fold = 0; fold < TrainingSet.Folds; fold++)
        {
            var weights = ModelTables.Of(Fit([.. lessons.Where((_, at) => set.Parts[at] != fold)]));
            for (var at = 0; at < set.Count; at++)
            {
                if (set.Parts[at] == fold)
                {
                    Interpreter.JudgeTalk(set.Notes[at], weights);
                    right += set.Notes[at].Talk > 0 == (set.Meant[at].Findings.Count == 0) ? 1 : 0;
                }
            }
        }

        log.WriteLine($"talk: told apart {(double)right / set.Count:P1} of {set.Count}");
        return Fit(lessons);
    }

    private static Lesson Lesson(uint[] features, bool talk) => new([[.. features.Select(key => (key, 1f))], []], [talk, !talk]);

    private static Dictionary<uint, double> Fit(IReadOnlyList<Lesson> lessons) => new LogLinear([.. lessons.Select(lesson => new[] { lesson })], Least, Strength).Fit(Rounds);
}
