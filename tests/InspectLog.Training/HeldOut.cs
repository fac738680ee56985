using InspectLog.Dictation.Understanding;
using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Saying;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Training;

/// <summary>How notes are read that nothing was learned from: exact, how often what is meant was among the likeliest or within
/// reach at all, and at which probability how many findings would be marked.</summary>
internal sealed class HeldOut(TrainingSet set, ReaderModel model, TextWriter to)
{
    private sealed record Judged(bool IsReading, bool Right, bool Ruled, double Sure);

    private sealed record Read(bool Exact, bool Among, bool Reached, IReadOnlyList<Judged> Findings, Outcome? Outcome);

    public void Report(TextWriter? misses)
    {
        var read = new Read[set.Count];
        Parallel.For(0, set.Count, Workers.Options, at => read[at] = One(at));
        foreach (var batch in Enumerable.Range(0, set.Count).GroupBy(at => set.Meant[at].Id.TrimEnd([.. "0123456789"])).Append(Enumerable.Range(0, set.Count).GroupBy(_ => "all").First()))
        {
            var of = batch.Select(at => read[at]).ToList();
            to.WriteLine($"{batch.Key}: exact {Share(of, one => one.Exact)}, among the likeliest {Share(of, one => one.Among)}, within reach {Share(of, one => one.Reached)}; {Marks(of, true)}; {Marks(of, false)}; right marked {Marked(of):P1}");
        }

        Curve(read, true);
        Curve(read, false);
        foreach (var at in Enumerable.Range(0, set.Count).Where(at => !read[at].Exact))
        {
            var kind = read[at].Among ? "" : read[at].Reached ? "NOT AMONG " : "NO WAY ";
            misses?.WriteLine($"{kind}{TrainingCommand.Miss(set, at, read[at].Outcome)}");
        }
    }

    private Read One(int at)
    {
        var (note, goal) = (set.Notes[at], new TrainingGoal(set.Meant[at]));
        Interpreter.JudgeTalk(note, model.Talk);
        var readings = new Decoder(model.Choices).Read(note);
        var outcome = readings.Count == 0 ? null : Interpreter.Likeliest(readings, model.Wholes);
        var reached = new Decoder(model.Choices).Read(note, goal).Count > 0;
        return new(
            outcome is null ? set.Meant[at].Findings.Count == 0 : goal.IsMet(outcome.Reading.Found),
            readings.Exists(one => goal.IsMet(one.Found)),
            reached,
            outcome is null ? [] : [.. DoubtTraining.Judge(set.Meant[at], outcome).Select(one => new Judged(
                one.Belief.Claim.Kind == FindingKind.Reading, one.Right, Marking.IsRuled(outcome, one.Belief), Marking.SureOf(model, outcome, one.Belief)))],
            outcome);
    }

    private bool IsPlain(Judged one) => !one.Ruled && one.Sure >= (one.IsReading ? model.PlainReading : model.PlainOther);

    private string Marks(List<Read> of, bool readings)
    {
        var some = of.SelectMany(one => one.Findings).Where(one => one.IsReading == readings).ToList();
        return $"{(readings ? "readings" : "others")} wrong unmarked {some.Count(one => !one.Right && IsPlain(one))} of {some.Count}";
    }

    private double Marked(List<Read> of)
    {
        var right = of.SelectMany(one => one.Findings).Where(one => one.Right).ToList();
        return (double)right.Count(one => !IsPlain(one)) / Math.Max(1, right.Count);
    }

    private void Curve(IReadOnlyList<Read> read, bool readings)
    {
        var some = read.SelectMany(one => one.Findings).Where(one => one.IsReading == readings).ToList();
        to.WriteLine($"{(readings ? "readings" : "others")}, right ones: {some.Count(one => one.Right)}, by rule marked {some.Count(one => one.Right && one.Ruled)} (wrong ones {some.Count(one => !one.Right)}, {some.Count(one => !one.Right && one.Ruled)})");
        foreach (var from in new[] { 0.5, 0.6, 0.7, 0.75, 0.8, 0.85, 0.88, 0.9, 0.92, 0.94, 0.96, 0.98 })
        {
            var wrong = some.Count(one => !one.Right && !one.Ruled && one.Sure >= from);
            to.WriteLine($"  from {from:0.00}: wrong unmarked {wrong} ({(double)wrong / some.Count:P2}; without rules {some.Count(one => !one.Right && one.Sure >= from)}), right marked {(double)some.Count(one => one.Right && (one.Ruled || one.Sure < from)) / some.Count(one => one.Right):P1} (without rules {(double)some.Count(one => one.Right && one.Sure < from) / some.Count(one => one.Right):P1})");
        }
    }

    private static string Share(List<Read> of, Func<Read, bool> which) => $"{of.Count(which)}/{of.Count}={(double)of.Count(which) / of.Count:P1}";
}
