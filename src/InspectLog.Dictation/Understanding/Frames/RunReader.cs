using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Doubting;
using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>A run of numbers, read.</summary>
/// <param name="Check">The check its values belong to; null where no check fits.</param>
/// <param name="Roles">What its numbers stand for.</param>
/// <param name="Nameless">Whether only the unit tells the check.</param>
internal readonly record struct Run(Check? Check, IReadOnlyList<NumberRole> Roles, bool Nameless);

/// <summary>Reads a run of numbers for the check that the words around it name.</summary>
internal sealed class RunReader(
    CheckSheet sheet, Topics topics, NumberLookup numbers, Check? openCheck, Draft draft)
{
    // How much a better fitting name counts against a cheaper reading of the numbers.
    private const double NameWeight = 0.15;

    // More checks than these are never named by the same few words.
    private const int MostCandidates = 5;

    // Two checks whose readings cost about the same cannot be told apart.
    private const double Undecided = 1.1;

    private readonly IReadOnlyList<Token> _tokens = numbers.Tokens;
    private readonly Row _row = new(sheet, numbers, draft);
    private readonly RunChecks _checks = new(sheet, topics, numbers, openCheck, draft);

    private readonly record struct Reading(Check Check, int Score, IReadOnlyList<NumberRole> Roles, double Cost);

    /// <summary>Whether the run is the number in "all six".</summary>
    public bool CountsAll()
    {
        var run = draft.Item;
        return draft.Before?.Role is Role.All or Role.Any or Role.Rest or Role.Both or Role.Neither or Role.Filler
            && draft.Frame.Set != PlaceSet.None && draft.Frame.Places.Count == 0
            && numbers.Numbers(run.First) is [{ Whole: true } number, ..] && number.Next == run.Next
            && (number.Value == sheet.Cylinders || draft.Before.Role is Role.All or Role.Rest && number.Value > 1);
    }

    /// <summary>What the numbers of the current item stand for.</summary>
    public Run Read()
    {
        var run = draft.Item;
        var context = Context();
        var named = _checks.Named(out var nameless);
        var candidates = _checks.Placed(named, context.PlaceNounBefore || context.PlaceKnown);
        var dropped = candidates.Count < named.Count ? named.First(one => !candidates.Contains(one)).Check : null;
        var best = candidates.Count == 0 ? 0 : candidates.Max(candidate => candidate.Score);
        var quantity = best >= Topics.SubjectWeight && candidates.Where(candidate => candidate.Score == best).All(candidate => candidate.Check.Measurand is not null);
        draft.Frame.Row |= _row.Lists(best, ofOpen: candidates is [var only] && only.Check == openCheck);
        context = context with { Listing = context.Listing || draft.Frame.Row, ValueDue = quantity && !draft.Frame.Says && draft.Ahead(item => item.Role is not (Role.Filler or Role.Comma)) is null };
        var readings = candidates.Take(MostCandidates)
            .Select(candidate => (candidate, Read: NumberRoles.Of(numbers, run.First, run.Next, candidate.Check, context)))
            .Select(read => new Reading(
                read.candidate.Check, read.candidate.Score, read.Read.Roles, read.Read.Cost + (best - read.candidate.Score) * NameWeight))
            .OrderBy(reading => reading.Cost)
            .ThenBy(reading => reading.Check == openCheck ? 0 : 1)
            .ToList();
        return readings.Count == 0
            ? new(null, [], nameless)
            : new(readings[0].Check, Joined(OfOpen(candidates, Sized(readings[0], Doubted(readings, dropped)))), nameless);
    }

    private IReadOnlyList<NumberRole> OfOpen(IReadOnlyList<(Check Check, int Score)> candidates, IReadOnlyList<NumberRole> roles) =>
        candidates is [{ Score: 0 } only] && only.Check == openCheck ? BareNumbers.Doubted(roles, draft.Items, _tokens) : roles;

    // "The distributor" and "the strobe" tell of an angle only where degrees are said: they have a price and an age too.
    private IReadOnlyList<NumberRole> Sized(Reading best, IReadOnlyList<NumberRole> roles) =>
        best.Check.Measurand?.Kind == QuantityKind.Angle && (best.Check != openCheck && best.Score < Topics.SubjectWeight && !_checks.Spoken(best.Check) || IsModel())
            ? [.. roles.Where(role => role is not ValueNumber { UnitSaid: false })]
            : roles;

    // "The Mark two" is a car, "mark eight before" a reading.
    private bool IsModel() => draft.Item.First > 0 && _tokens[draft.Item.First - 1] is { Text: "mark" } && (draft.Item.First < 2 || _tokens[draft.Item.First - 2].Stem != "timing");

    private RunContext Context()
    {
        var frame = draft.Frame;
        var on = draft.Before is { Role: Role.Preposition } preposition && _tokens[preposition.First].Stem == "on";
        var corrected = draft.Repairing && frame.Placed && frame.Predicates.TrueForAll(predicate => predicate is not ValueSaid);
        var known = frame.Placed && !(frame is { Says: true, SubjectBefore: true } && draft.Separated)
            || !frame.HasSubject && draft.Frames.Count > 1 && draft.Frames[^2] is { Placed: true } last && last.Sentence == draft.Sentence;
        var listing = frame is { Says: true, Set: PlaceSet.None } && frame.Predicates.TrueForAll(predicate => predicate is ValueSaid)
            && frame.Places.Sum(place => place.Cylinders.Count) > frame.Predicates.Count;
        var marked = draft.PlaceMarked && !(draft.Between && frame.Set == PlaceSet.All);
        return new(marked || on || draft.Excepting || corrected || IsInSeries(known), known && !corrected, sheet.Cylinders, draft.Between, listing,
            ValueDue: false, Marked: draft.Before is { Role: Role.PlaceMark });
    }

    // "One fine, two nothing, three weak": each number between a comma and what is said of it is the next cylinder.
    private bool IsInSeries(bool placed) =>
        (placed || draft.Frame is { Placed: true, Says: true }) && draft.Before is { Role: Role.Comma }
        && draft.Ahead() is { Condition: true } or { Role: Role.Nothing or Role.Yes or Role.Good or Role.Bad };

    // Where a second check explains the numbers about as well, a person has to choose.
    private IReadOnlyList<NumberRole> Doubted(List<Reading> readings, Check? dropped)
    {
        var best = readings[0];
        var rival = readings.Count < 2 || readings[1].Cost - best.Cost > Undecided
            || best.Score - readings[1].Score > 2 * Topics.PartWeight
            || !readings[1].Roles.Any(role => role is ValueNumber) ? dropped : readings[1].Check;
        if (rival is null || best.Check == openCheck)
        {
            return best.Roles;
        }

        var doubt = Doubts.OneOf(best.Check.ShortTitle, rival.ShortTitle);
        return [.. best.Roles.Select(role => role is ValueNumber value ? value with { Doubt = Doubts.Join(value.Doubt, doubt) } : role)];
    }

    // Cylinders in a row are one place: "two and three".
    private static List<NumberRole> Joined(IReadOnlyList<NumberRole> roles)
    {
        var joined = new List<NumberRole>();
        foreach (var role in roles)
        {
            if (role is PlaceNumbers more && joined is [.., PlaceNumbers last])
            {
                joined[^1] = new PlaceNumbers(
                    last.First, more.Next, [.. last.Cylinders, .. more.Cylinders], Doubts.Join(last.Doubt, more.Doubt));
            }
            else
            {
                joined.Add(role);
            }
        }

        return joined;
    }
}
