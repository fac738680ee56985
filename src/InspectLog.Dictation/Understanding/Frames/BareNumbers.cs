using InspectLog.Dictation.Understanding.Doubting;
using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Doubts numbers that only the check open on the bench makes values of: "ten" and "it's ten" are read off, "I'm off at
/// ten" is talk.</summary>
internal static class BareNumbers
{
    /// <summary>The roles of a run for the open check, whole numbers without a unit marked where more is said than that
    /// something was read off.</summary>
    public static IReadOnlyList<NumberRole> Doubted(IReadOnlyList<NumberRole> roles, IReadOnlyList<Item> sentence, IReadOnlyList<Token> tokens) =>
        sentence.All(item => ReadsOff(item, tokens) || item.Role == Role.Person && sentence.Any(done => done.Actions.Count > 0))
            ? roles
            : [.. roles.Select(role => role is ValueNumber { UnitSaid: false } value && value.Number == decimal.Truncate(value.Number)
                ? value with { Doubt = Doubts.Join(value.Doubt, Doubts.BareNumber) }
                : role)];

    private static bool ReadsOff(Item item, IReadOnlyList<Token> tokens) =>
        item.Number || item.Role == Role.Good || item.Ordinal is not null || item.Group is not null || item.Actions.Count > 0 || item.Subject
        || item is { Conditions.Count: 0, Blocked: false }
            && item.Role is not (Role.Unknown or Role.OtherPart or Role.Person or Role.Same)
            && tokens[item.First].Text is not ("nearly" or "almost" or "down" or "time");
}
