using InspectLog.Dictation.Understanding;
using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Training;

/// <summary>What a note of the corpus means. How the words come to mean it is left to the search.</summary>
internal sealed class TrainingGoal : IGoal
{
    private const double Tolerance = 5e-4; // labels are rounded where a unit was converted

    private readonly IReadOnlyList<(Claim Claim, int Place)> _meant;
    private readonly HashSet<int> _places;
    private readonly List<double> _values;

    public TrainingGoal(TrainingNote note)
    {
        _meant = note.Findings;
        _places = [.. _meant.Where(one => one.Place > 0).Select(one => one.Place)];
        _values = [.. _meant.SelectMany(one => one.Claim.Bracket is { } bracket ? [bracket.Goes, bracket.Stops] : one.Claim.Value is { } value ? new[] { value } : []).Select(Math.Abs)];
    }

    public bool Allows(Note note, NumberSegment[] numbers) => numbers.All(number => number.Role switch
    {
        NumberRole.Place => _places.Contains((int)number.Value) || _places.Count > 0 && Stretches(note, number),
        NumberRole.Value => note.Lexicon.Checks.Any(check => ValueMeanings.Of(check, number).Any(meaning => _values.Exists(value => Close(value, Math.Abs(meaning.Value))))),
        _ => true,
    });

    public bool Allows(Claim claim) => _meant.Any(one => Same(one.Claim, claim));

    public bool Allows(Claim claim, long places) => places == 0
        ? _meant.Any(one => one.Place == 0 && Same(one.Claim, claim))
        : PlaceSets.Of(places).All(place => _meant.Any(one => one.Place == place && Same(one.Claim, claim)));

    public bool IsMet(Found? found)
    {
        var left = _meant.ToList();
        foreach (var (claim, place, _) in Interpreter.Claims(found))
        {
            var at = left.FindIndex(one => one.Place == place && Same(one.Claim, claim));
            if (at < 0)
            {
                return false;
            }

            left.RemoveAt(at);
        }

        return left.Count == 0;
    }

    public static bool Same(Claim one, Claim other) => one.Kind == other.Kind && one.Check == other.Check && one.Condition == other.Condition
        && one.Negated == other.Negated && one.Action == other.Action && Close(one.Value, other.Value)
        && Close(one.Bracket?.Goes, other.Bracket?.Goes) && Close(one.Bracket?.Stops, other.Bracket?.Stops);

    private static bool Close(double? a, double? b) => a is null == b is null && Math.Abs((a ?? 0) - (b ?? 0)) <= Tolerance * Math.Max(Math.Abs(a ?? 0), 1e-9);

    // "The first three", "two to five", "four onwards": a number that says where places begin or end need be none itself.
    private static bool Stretches(Note note, NumberSegment number)
    {
        var words = note.Lexicon.Language.Places;
        var before = number.First > 0 ? note.Tokens[number.First - 1].Text : "";
        return words.First.Contains(before) || words.Last.Contains(before) || words.From.Contains(before) || words.Past.Contains(before)
            || words.Onward(note.Tokens, number.Next) > 0 || words.UpToBefore(note.Tokens, number.First)
            || note.Of(SpeechRole.Exception).Any(word => word.Next <= number.First && number.First - word.Next <= 6);
    }
}
