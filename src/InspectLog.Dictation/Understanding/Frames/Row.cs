using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>The row of numbers that begins with the current item.</summary>
internal sealed class Row(CheckSheet sheet, NumberLookup numbers, Draft draft)
{
    private readonly IReadOnlyList<Token> _tokens = numbers.Tokens;

    /// <summary>"Gap thirty two on one".</summary>
    public bool PlaceAhead() => draft.At + 2 < draft.Items.Count && draft.Items[draft.At + 1] is { Role: Role.Preposition } on
        && _tokens[on.First].IsWord("on") && draft.Items[draft.At + 2] is { Number: true } or { Role: Role.PlaceMark };

    /// <summary>"Leads one to six: five, five, six, six, seven, eight k": as many numbers as places, none of them a place.</summary>
    public bool Lists(int score, bool ofOpen)
    {
        var places = draft.Frame.Places.Sum(place => place.Cylinders.Count);
        var expected = places > 1 ? places : places == 0 && (draft.Frame.Set == PlaceSet.All && draft.Frame.Except.Count == 0 || score >= Topics.SubjectWeight || ofOpen) ? sheet.Cylinders : 0;
        return expected > 0 && !draft.Frame.Says && !draft.Repairing && !HoldsRange() && Counts() == expected && !NumbersItself();
    }

    // "One, five k, two, five point two, three, five": every other number counts the places.
    private bool NumbersItself()
    {
        var last = draft.Items.Skip(draft.At).TakeWhile(item => item.Number || item.Role is Role.Comma).Last();
        var starts = Enumerable.Range(draft.Item.First, last.Next - draft.Item.First)
            .Where(at => (at == draft.Item.First || _tokens[at - 1].IsMark(',')) && numbers.Numbers(at).Count > 0)
            .Select(at => numbers.Numbers(at)).ToList();
        var places = starts.Where((_, i) => i % 2 == 0).Select(readings => readings is [{ Whole: true } number, ..] ? number.Value : -1).ToList();
        return starts.Count >= 4 && starts.Count % 2 == 0 && places[0] == 1 && places.Zip(places.Skip(1)).All(pair => pair.Second == pair.First + 1);
    }

    private bool HoldsRange() => Enumerable.Range(draft.Item.First, draft.Item.Next - draft.Item.First)
        .Any(at => _tokens[at].IsMark('-') || _tokens[at].Stem is "to" or "through" or "thru");

    /// <summary>How many numbers stand in a row from the current item on, parted by commas and "and".</summary>
    public int Counts()
    {
        var count = 0;
        foreach (var item in draft.Items.Skip(draft.At).TakeWhile(item => item.Number || item.Role is Role.Comma or Role.And or Role.Filler))
        {
            count += item.Number ? 1 + Enumerable.Range(item.First, item.Next - item.First)
                .Count(at => at > item.First && (_tokens[at].IsMark(',') || _tokens[at].Stem is "and" or "then" && numbers.Numbers(at + 1).Count > 0
                    && !(at + 1 < item.Next && numbers.Numbers(at + 1)[0].Value < 1))) : 0;
            if (count > sheet.Cylinders)
            {
                break;
            }
        }

        return count;
    }
}
