using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;
using InspectLog.Doubts;

namespace InspectLog.Dictation.Understanding.Saying;

/// <summary>Says why a finding is in doubt: by what competes with it, by what of its clause was not used, and by how its words had
/// to be taken.</summary>
internal static class DoubtReasons
{
    private const int MostReasons = 3;
    private const double LeastRival = 0.02;

    /// <summary>The reasons; at least one.</summary>
    public static DoubtList Of(Outcome outcome, Belief belief)
    {
        var scene = outcome.Reading.Scene;
        var reasons = Placed(scene, belief).Concat(Taken(scene, belief.Found)).Concat(Rivals(outcome, belief)).Concat(Unused(outcome, belief.Found)).Take(MostReasons).ToList();
        return DoubtList.Of([.. reasons.Count > 0 ? reasons : [new SeldomSaidSo()]]);
    }

    // How the words had to be taken.
    private static IEnumerable<Doubt> Taken(NoteScene scene, Found found)
    {
        var check = scene.Checks[found.Claim.Check];
        if (IsHedged(scene, found))
        {
            yield return new Hedged();
        }

        if (found.Event.Number is { } number && found.Claim.Value is { } value && check.Measurand is { } measurand)
        {
            if (!measurand.Plausible.Holds(value))
            {
                yield return new OutsidePlausibleSpan(check.Check.Id, value, measurand.Plausible.From, measurand.Plausible.To);
            }

            var meanings = ValueMeanings.Of(check, number).ToList();
            if (number.Units is null && meanings.Count > 1)
            {
                var units = Measuring.Units.Of(measurand.Kind).ToList();
                var taken = units.Find(unit => Math.Abs(unit.ToBase(number.Value) - Math.Abs(value)) < 1e-6 * Math.Abs(value));
                var other = units.Find(unit => unit != taken && measurand.Plausible.Holds(unit.ToBase(number.Value)));
                if (taken is not null && other is not null)
                {
                    yield return new UnitUnsaid(taken.Symbol, other.Symbol);
                }
            }
        }

        foreach (var heard in Heard(scene, found))
        {
            yield return heard;
        }

        foreach (var alike in scene.Segments.Where(one => one.Form == NumberForm.Alike && one.Role != NumberRole.Other && scene.InSentence(one.First, found.Event.First)))
        {
            yield return new TakenForNumber(scene.Note.Tokens[alike.First].Text, (int)alike.Value);
        }
    }

    private static IEnumerable<Doubt> Placed(NoteScene scene, Belief belief)
    {
        var check = scene.Checks[belief.Claim.Check];
        if (check.PerPlace && belief.Place == 0)
        {
            yield return new PlaceUnnamed(check.Check.Id, check.Check.PlaceNoun!);
        }
        else if (IsPlaceImplied(scene, belief))
        {
            yield return new TakenInOrder();
        }
    }

    /// <summary>Whether a value has no place though each place has its own.</summary>
    public static bool LacksPlace(NoteScene scene, Belief belief) =>
        belief.Claim.Kind == FindingKind.Reading && belief.Place == 0 && scene.Checks[belief.Claim.Check].PerPlace;

    /// <summary>Whether a value is said of a place that nothing names.</summary>
    public static bool IsPlaceImplied(NoteScene scene, Belief belief) => belief.Claim.Kind == FindingKind.Reading && IsPlaceUnsaid(scene, belief);

    /// <summary>Whether nothing names the place of a finding: beside a number that was not used it may be of another, as of one that the vehicle does not have.</summary>
    public static bool IsPlaceUnsaid(NoteScene scene, Belief belief) => belief.Place > 0
        && !scene.Groups.Exists(group => group.Count > 0 || (group.Places & PlaceSets.One(belief.Place)) != 0);

    /// <summary>Whether the speaker said not to be sure of it.</summary>
    public static bool IsHedged(NoteScene scene, Found found) => scene.Note.Of(SpeechRole.Hedge).Any(word => scene.InSentence(word.First, found.Event.First)
        && (scene.InClause(word.First, found.Event.First) || scene.Note.Between(Math.Min(word.Next, found.Event.Next), Math.Max(word.First, found.Event.First)) <= Boundary.Clause));

    /// <summary>The words of a finding that were taken for others that sound alike.</summary>
    public static IEnumerable<Doubt> Heard(NoteScene scene, Found found)
    {
        var note = scene.Note;
        var name = note.Names.Find(one => one.Cost > 0 && scene.InSentence(one.First, found.Event.First) && Evidence.KindOf(one, found.Claim.Check) is not null);
        var heard = name is null ? [] : new[] { (name.First, name.Next) };
        foreach (var (first, next) in found.Event.Condition is { Cost: > 0 } condition ? heard.Append((condition.First, condition.Next)) : heard)
        {
            var said = note.Text[note.Tokens[first].Start..note.Tokens[next - 1].End];
            var taken = note.Lexicon.Sounds.Nearest([.. note.Tokens.Skip(first).Take(next - first)])?.Phrase.Text ?? said;
            yield return new TakenFor([new(said, taken)], []);
        }
    }

    // What the likeliest readings without it say of the same words.
    private static IEnumerable<Doubt> Rivals(Outcome outcome, Belief belief)
    {
        foreach (var (reading, share) in outcome.Rivals.Take(8))
        {
            var claims = Interpreter.Claims(reading.Found);
            if (share < LeastRival * outcome.Share || claims.Exists(one => one.Claim == belief.Claim && one.Place == belief.Place))
            {
                continue;
            }

            var rival = claims.Find(one => one.Found.Event.First == belief.Found.Event.First);
            yield return rival.Claim is null ? new PerhapsNothing() : Against(outcome.Reading.Scene, belief, rival.Claim, rival.Place);
            yield break;
        }
    }

    private static Doubt Against(NoteScene scene, Belief belief, Claim rival, int place)
    {
        var (check, other) = (scene.Checks[belief.Claim.Check].Check, scene.Checks[rival.Check].Check);
        if (check != other)
        {
            return new EitherCheck(check.Id, other.Id);
        }

        if (rival.Condition >= 0 && belief.Claim.Condition >= 0 && rival.Condition != belief.Claim.Condition)
        {
            return new EitherCondition(check.Conditions[belief.Claim.Condition].Id, other.Conditions[rival.Condition].Id);
        }

        if (rival.Negated != belief.Claim.Negated)
        {
            return new PerhapsNegated();
        }

        if (rival.Value is { } value && belief.Claim.Value is { } taken && value != taken)
        {
            return new Competes(check.Id, taken, value);
        }

        return place != belief.Place ? new OtherPlace(place) : new SeldomSaidSo();
    }

    /// <summary>Numbers, negations and unknown words of the clause that nothing was made of.</summary>
    public static IEnumerable<Doubt> Unused(Outcome outcome, Found found)
    {
        var (scene, note) = (outcome.Reading.Scene, outcome.Reading.Scene.Note);
        foreach (var (first, next) in UnusedNumbers(outcome, found))
        {
            yield return new WasNotUsed(note.Text[note.Tokens[first].Start..note.Tokens[next - 1].End]);
        }

        for (var at = 0; at < note.Length; at++)
        {
            if (!note.IsUnknown(at) || !scene.InClause(at, found.Event.First))
            {
                continue;
            }

            var first = at;
            while (note.IsUnknown(at + 1) && scene.InClause(at + 1, first))
            {
                at++;
            }

            yield return new UnknownWords(note.Text[note.Tokens[first].Start..note.Tokens[at].End]);
        }
    }

    /// <summary>The numbers of the clause of a finding that nothing was made of.</summary>
    public static IEnumerable<(int First, int Next)> UnusedNumbers(Outcome outcome, Found found)
    {
        var scene = outcome.Reading.Scene;
        var events = Found.All(outcome.Reading.Found).ToList();
        var bracketed = events.Where(one => one.Claim.Bracket is not null).Select(one => scene.Events.Find(other => other.Kind == EventKind.Value && other.First >= one.Event.Next)).ToHashSet();
        return scene.Segments.Where(number => scene.InClause(number.First, found.Event.First)
                && number.Form is not (NumberForm.Ordinal or NumberForm.Alike)
                && !scene.Note.Quantifiers.Exists(span => span.First <= number.First && number.First < span.Next)
                && (number.Role == NumberRole.Other || number.Role == NumberRole.Value && !events.Exists(one => one.Event.First == number.First) && !bracketed.Any(other => other?.First == number.First)))
            .Select(number => (number.First, number.Next));
    }
}
