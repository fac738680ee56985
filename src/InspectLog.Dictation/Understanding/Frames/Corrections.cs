using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Corrections that are said after the right words: "lead two is burnt, three I mean".</summary>
internal static class Corrections
{
    /// <summary>The items with a correction at the end of a clause in front of what it puts right: "three, I mean" as "I
    /// mean three".</summary>
    public static IReadOnlyList<Item> InFront(IReadOnlyList<Item> items)
    {
        var last = items.Count - 1;
        while (last >= 0 && items[last].Role is Role.Filler or Role.Comma)
        {
            last--;
        }

        if (last < 1 || items[last].Role != Role.Correct)
        {
            return items;
        }

        var next = last;
        while (next > 0 && items[next - 1].Role == Role.Comma)
        {
            next--;
        }

        var first = next;
        while (first > 0 && items[first - 1].Role is not (Role.Comma or Role.Correct or Role.Retract))
        {
            first--;
        }

        return first == next || !items.Skip(first).Take(next - first).Any(item => item.Number || item.Subject || item.Condition)
            ? items
            : [.. items.Take(first), items[last], .. items.Skip(first).Take(next - first), .. items.Skip(last + 1)];
    }
}
