using System.Diagnostics;
using System.Security.Cryptography;
using System.Text.RegularExpressions;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Training;

/// <summary>Learns the weights of the reader from the corpus and writes them where the program takes them from; from files that are
/// named, to try something, and writes nothing. Says how each batch is read by what the others taught; <c>--misses FILE</c> lists what
/// was misread, <c>--out FILE</c> keeps the weights, <c>--share 0.5</c> takes a part of the notes, <c>--on FILES --unseen FILE</c> says
/// how notes are read that were not learned from, by what <c>--by FILE</c> holds without learning anything.</summary>
internal static partial class TrainingCommand
{
    public static int Run(string[] arguments, TextWriter to)
    {
        var clock = Stopwatch.StartNew();
        var on = Option(arguments, "--on")?.Split(',') ?? [];
        if (Option(arguments, "--by") is { } learned)
        {
            ReportUnseen(arguments, on, File.ReadAllBytes(learned), to);
            return 0;
        }

        var files = arguments.Where((argument, at) => argument.EndsWith(".jsonl", StringComparison.Ordinal) && (at == 0 || arguments[at - 1] != "--on")).ToList();
        var sheets = arguments.Where(argument => argument.EndsWith(".json", StringComparison.Ordinal)).Select(file => CheckSheetFile.Parse(File.ReadAllBytes(file)));
        var share = Option(arguments, "--share") is { } some ? double.Parse(some, System.Globalization.CultureInfo.InvariantCulture) : 1;
        var ships = files.Count == 0;
        var set = new TrainingSet(ships ? ReaderTraining.Files() : files, sheets, note => note.Part(256) < share * 256);
        to.WriteLine($"{set.Count} notes ({clock.Elapsed.TotalSeconds:0} s)");
        var trainer = new ReaderTrainer(set, to, Option(arguments, "--strength") is { } held ? double.Parse(held, System.Globalization.CultureInfo.InvariantCulture) : ReaderTrainer.UsualStrength);
        var bytes = trainer.Train();
        if (ships)
        {
            var folder = ReaderTraining.Folder("src", "InspectLog.Dictation", "weights");
            File.WriteAllBytes(Path.Combine(folder, "reader.weights"), bytes);
            File.WriteAllText(Path.Combine(folder, "SHA256SUMS"), $"{Convert.ToHexStringLower(SHA256.HashData(bytes))}  reader.weights\n");
        }

        if (Option(arguments, "--out") is { } file)
        {
            File.WriteAllBytes(file, bytes);
        }

        Report(set, trainer, to, Option(arguments, "--misses"));
        if (on.Length > 0)
        {
            ReportUnseen(arguments, on, bytes, to);
        }

        to.WriteLine($"{bytes.Length} bytes, {clock.Elapsed.TotalSeconds:0} s");
        return 0;
    }

    private static string? Option(string[] arguments, string name) => Array.IndexOf(arguments, name) is >= 0 and var at && at + 1 < arguments.Length ? arguments[at + 1] : null;

    private static void ReportUnseen(string[] arguments, string[] files, byte[] weights, TextWriter to)
    {
        var model = ReaderModelFile.Read(weights);
        using var list = Option(arguments, "--unseen") is { } file ? new StreamWriter(file) : null;
        new HeldOut(new(files, [], familiar: model), model, to).Report(list);
    }

    // How each batch is read by what the others taught.
    private static void Report(TrainingSet set, ReaderTrainer trainer, TextWriter to, string? misses)
    {
        var (outcomes, unreached) = (trainer.Outcomes, trainer.Unreached.ToHashSet());
        var batches = new SortedDictionary<string, (int Exact, int All)>(StringComparer.Ordinal);
        using var list = misses is null ? null : new StreamWriter(misses);
        for (var at = 0; at < set.Count; at++)
        {
            var exact = outcomes[at] is { } outcome ? new TrainingGoal(set.Meant[at]).IsMet(outcome.Reading.Found) : set.Meant[at].Findings.Count == 0;
            foreach (var batch in new[] { Letters().Match(set.Meant[at].Id).Value, "all", set.Meant[at].Sheet })
            {
                var (right, all) = batches.GetValueOrDefault(batch);
                batches[batch] = (right + (exact ? 1 : 0), all + 1);
            }

            if (!exact && outcomes[at] is { } wrong)
            {
                list?.WriteLine($"{(unreached.Contains(at) ? "NO WAY " : "")}{Miss(set, at, wrong)}");
            }
        }

        to.WriteLine("exact by what the others taught: " + string.Join(", ", batches.Select(batch => $"{batch.Key} {batch.Value.Exact}/{batch.Value.All}={(double)batch.Value.Exact / batch.Value.All:P1}")));
    }

    /// <summary>What a note says, what it means and what was read.</summary>
    internal static string Miss(TrainingSet set, int at, Outcome? read) =>
        $"{set.Meant[at].Id} [{set.Meant[at].Open}] {set.Meant[at].Text}\n   meant {Words(set, at, set.Meant[at].Findings)}\n   read  {Words(set, at, [.. (read?.Beliefs ?? []).Select(one => (one.Claim, one.Place))])}  ({read?.Share:0.00})";

    private static string Words(TrainingSet set, int at, IReadOnlyList<(Dictation.Understanding.Events.Claim Claim, int Place)> findings) => string.Join("; ", findings.Select(one =>
    {
        var check = set.Notes[at].Lexicon.Checks[one.Claim.Check].Check;
        var what = one.Claim.Action ?? (one.Claim.Condition >= 0 ? (one.Claim.Negated ? "no " : "") + check.Conditions[one.Claim.Condition].Id : one.Claim.Value?.ToString("R", System.Globalization.CultureInfo.InvariantCulture) ?? one.Claim.Bracket!.ToString());
        return $"{check.Id}{(one.Place > 0 ? $"@{one.Place}" : "")} {what}";
    }));

    [GeneratedRegex("^[a-z]+")]
    private static partial Regex Letters();
}
