using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>The names that follow the numbers before something else is said: "twelve volts at the ballast feed", "five k,
/// secondary".</summary>
internal sealed class NamesAhead(Draft draft, IReadOnlyList<Token> tokens)
{
    /// <summary>The words of the names that follow.</summary>
    /// <param name="mentioned">Whether a name stands before the numbers already.</param>
    public IEnumerable<NamedWord> Words(bool mentioned)
    {
        var gauged = draft.At > 0 && draft.Items.Take(draft.At).Any(item => item.Role is Role.Goes or Role.Stops);
        for (var i = draft.At + 1; i < draft.Items.Count; i++)
        {
            var item = draft.Items[i];
            if (gauged && !mentioned && (item.Number || item.Role is Role.Comma or Role.And or Role.But && IsGauged(i + 1)))
            {
                // "Goes at point three and stops at point four on the pickup".
                continue;
            }

            if (item.Role == Role.Comma && !mentioned && OnlyNames(i + 1))
            {
                mentioned = true;
                continue;
            }

            var place = item.Number && draft.Items[i - 1] is { Role: Role.PlaceMark or Role.Preposition } or { Subject: true };
            if (item.Role is Role.Comma or Role.But || item.Role == Role.And && !JoinsNames(i) || item.Role is Role.Verb or Role.Was && !item.Subject
                || item.Number && !place || mentioned && item.Role == Role.Preposition)
            {
                yield break;
            }

            foreach (var word in item.Subject ? Subjects.NamedWords(tokens, item) : [])
            {
                yield return word;
            }
        }
    }

    private bool IsGauged(int at) => draft.Items.Skip(at).FirstOrDefault(item => item.Role != Role.Filler)?.Role is Role.Goes or Role.Stops;

    // "The ballast plus coil", "the cap and rotor".
    private bool JoinsNames(int and) =>
        draft.Items[and - 1].Subject && draft.Items.Skip(and + 1).FirstOrDefault(item => item.Role != Role.Filler) is { Subject: true };

    // Whether nothing but a name follows, so that it belongs to what stands before the comma.
    private bool OnlyNames(int from)
    {
        var rest = draft.Items.Skip(from).TakeWhile(item => item.Role is not (Role.Comma or Role.But))
            .Where(item => item.Role != Role.Filler).ToList();
        return rest.Any(item => item.Subject) && rest.All(item => item.Subject && !item.Condition
            || item.Number && item.Next == item.First + 1 && item == rest[^1]
            || item.Role is Role.Preposition or Role.PlaceMark);
    }
}
