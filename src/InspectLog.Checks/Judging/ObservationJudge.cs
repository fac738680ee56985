namespace InspectLog.Checks.Judging;

/// <summary>Judges observed checks by what was said of them.</summary>
/// <remarks>
/// <para>Each condition means what the sheet says. A good one said to be absent ("no spark") is bad; a bad one said
/// to be absent ("not cracked") leaves nothing wrong, and counts as seen.</para>
/// <para>A later word on the same condition replaces the earlier; different conditions stand side by side and the
/// worst counts, so "cracked" is not undone by "clean". Once something was done to the part (replaced, cleaned,
/// adjusted, reconnected) what is seen afterwards counts alone; until it is seen again, what was found before
/// stands.</para>
/// </remarks>
public static class ObservationJudge
{
    /// <summary>The judgement of every place of a check: one for each cylinder or place of its own, or a single one for a
    /// check done once.</summary>
    /// <param name="check">The check.</param>
    /// <param name="cylinders">How many cylinders the engine has.</param>
    /// <param name="statements">What was recorded on this check, oldest first. A statement about the whole counts for
    /// every place.</param>
    /// <exception cref="ArgumentException">A statement names a condition the check does not have, or a place there is
    /// not.</exception>
    public static IReadOnlyList<PlaceJudgement> JudgePlaces(
        Check check, int cylinders, IReadOnlyList<Statement> statements)
    {
        RefuseUnknown(check, cylinders, statements);
        int?[] places = check.Places is { } set ? [.. Enumerable.Range(1, set.CountFor(cylinders)).Cast<int?>()] : [null];
        return [.. places.Select(place => new PlaceJudgement(place, JudgePlace(check, place, statements)))];
    }

    /// <summary>Which observations of one place still stand: their positions among its statements, in order.</summary>
    /// <param name="statements">What was recorded on the place and on the part as a whole, oldest first.</param>
    public static IReadOnlyList<int> Standing(IReadOnlyList<Statement> statements)
    {
        var standing = new Dictionary<string, int>(StringComparer.Ordinal);
        var doneSinceLook = false;
        for (var at = 0; at < statements.Count; at++)
        {
            if (statements[at] is Observed seen)
            {
                if (doneSinceLook)
                {
                    standing.Clear();
                }

                doneSinceLook = false;
                standing[seen.Condition] = at;
            }
            else if (statements[at] is Done { Action: not PartActions.Disconnected })
            {
                doneSinceLook = true;
            }
        }

        return [.. standing.Values.Order()];
    }

    private static Judgement JudgePlace(Check check, int? place, IEnumerable<Statement> statements)
    {
        var said = statements.Where(one => one.Cylinder is null || one.Cylinder == place).ToList();
        return Standing(said).Select(at => Meaning(check, (Observed)said[at])).DefaultIfEmpty(Judgement.Unsaid).Max();
    }

    private static Judgement Meaning(Check check, Observed seen)
    {
        var condition = check.Conditions.First(known => known.Id == seen.Condition);
        return (condition.Meaning, seen.Negated) switch
        {
            (ConditionMeaning.Good, true) => Judgement.Bad,
            (ConditionMeaning.Attention, false) => Judgement.Attention,
            (ConditionMeaning.Bad, false) => Judgement.Bad,
            _ => Judgement.Good,
        };
    }

    private static void RefuseUnknown(Check check, int cylinders, IEnumerable<Statement> statements)
    {
        foreach (var statement in statements)
        {
            if (statement is Observed seen && check.Conditions.All(known => known.Id != seen.Condition))
            {
                throw new ArgumentException(
                    $"{check.Title} knows no condition '{seen.Condition}'. It knows: " +
                    $"{string.Join(", ", check.Conditions.Select(known => known.Id))}.");
            }

            if (statement.Cylinder is { } place && (place < 1 || place > (check.Places?.CountFor(cylinders) ?? 0)))
            {
                throw new ArgumentException(check.Places is { } set
                    ? $"{check.Title} has places 1 to {set.CountFor(cylinders)}, not {place}."
                    : $"{check.Title} is done once, not per cylinder.");
            }
        }
    }
}
