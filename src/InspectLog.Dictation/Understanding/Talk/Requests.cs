using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Talk;

/// <summary>Tells what somebody is asked to do from what was done, where the words alone are the same: "you take lead one
/// off", "set the gap to point three and lock it".</summary>
internal static class Requests
{
    // In the past these sound as when asked for.
    private static readonly HashSet<string> Alike = new("set|put|cut|shut|let|split|read|hit".Split('|'), StringComparer.Ordinal);

    // Of what you see or find one tells.
    private static readonly HashSet<string> Seen = new("see|find|say|get|look".Split('|'), StringComparer.Ordinal);

    // Ask for something only with what it is to be done to, for they name parts and things too.
    private static readonly HashSet<string> WithObject = new(
        ("torque|lock|nip|slip|slide|bend|file|sand|polish|wash|rinse|spray|grease|plug|clip|seat|place|lay|count|label|number|warm|rev|drive|park|"
        + "compare|follow|trace|twist|wiggle|flex|squeeze|crimp|solder|strip|trim|tape|wrap|tie|cover|picture|mark|run|think|remember|forget|avoid|spin|rotate|slacken|loosen|secure|snug").Split('|'),
        StringComparer.Ordinal);

    /// <summary>The stretches of a clause that ask for something.</summary>
    public static IEnumerable<(int First, int Next)> In(SpokenClause clause)
    {
        for (var at = clause.First; at + 1 < clause.Next; at++)
        {
            if (clause.Stem(at) == "you" && Orders(clause.Text(at + 1)) && !Seen.Contains(clause.Text(at + 1)))
            {
                yield return (at, clause.Next);
            }
        }

        if (clause.Text(clause.Start) is "who" or "why")
        {
            // "... but who cleans a rotor these days": asked within the sentence.
            yield return (clause.Start, clause.Next);
        }

        if (clause.Stem(clause.Start) == "had" && clause.Stem(clause.Start + 1) is "the" or "it" or "this" or "that" or "they" or "lead" or "plug"
            && Enumerable.Range(clause.Start, clause.Next - clause.Start).Any(at => clause.Stem(at) == "been"))
        {
            // "Had the lead been loose, it would have shown."
            yield return (clause.Start, clause.Next);
        }

        if (WithObject.Contains(clause.Text(clause.Start)) && HasObject(clause, clause.Start + 1) || Alike.Contains(clause.Text(clause.Start)) && GoesOnAsking(clause))
        {
            yield return (clause.Start, clause.Next);
        }
    }

    // "... and lock it": of something done it were "and locked it".
    private static bool GoesOnAsking(SpokenClause clause) =>
        Enumerable.Range(clause.Start + 1, Math.Max(0, clause.Next - clause.Start - 1)).Any(at => clause.Stem(at) is "and" or "then"
            && (Orders(clause.Text(at + 1)) || WithObject.Contains(clause.Text(at + 1))) && !Alike.Contains(clause.Text(at + 1)) && HasObject(clause, at + 2));

    private static bool HasObject(SpokenClause clause, int at) =>
        clause.Stem(at) is "it" or "them" or "that" or "the" or "this" or "these" or "those" or "your" or "my" or "each" or "every" or "both" or "of" or "a";

    private static bool Orders(string word) => NonFindingCues.Orders.Contains(word) || NonFindingCues.LookOrders.Contains(word) && word != "do";
}
