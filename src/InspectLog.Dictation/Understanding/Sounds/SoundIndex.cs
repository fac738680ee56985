namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>Phrases by the number of their sounds, so that what was heard is aligned only with those of about its length.
/// </summary>
internal sealed class SoundIndex
{
    private readonly (Phone[] Sounds, SoundingPhrase Phrase)[][] _byLength;

    public SoundIndex(IEnumerable<SoundingPhrase> phrases)
    {
        var byLength = phrases.SelectMany(phrase => phrase.Sounds.Select(sounds => (sounds, phrase))).ToLookup(one => one.sounds.Length);
        var longest = byLength.Select(group => group.Key).DefaultIfEmpty(0).Max();
        _byLength = [.. Enumerable.Range(0, longest + 1).Select(length => byLength[length].ToArray())];
    }

    /// <summary>The phrases near to what was heard, each once, with the least distance.</summary>
    /// <param name="heard">The ways it may be said.</param>
    /// <param name="strictness">A factor on the greatest distance that counts.</param>
    public IEnumerable<SoundMatch> Near(IReadOnlyList<Phone[]> heard, double strictness)
    {
        var near = new Dictionary<SoundingPhrase, double>();
        foreach (var sounds in heard)
        {
            for (var length = 1; length < _byLength.Length; length++)
            {
                var longer = Math.Max(sounds.Length, length);
                var most = SoundThreshold.For(longer) * strictness;
                if (PhoneCosts.LeastLoss * Math.Abs(sounds.Length - length) <= most * longer)
                {
                    AddNear(near, sounds, _byLength[length], most);
                }
            }
        }

        return near.Select(one => new SoundMatch(one.Key, one.Value));
    }

    private static void AddNear(Dictionary<SoundingPhrase, double> near, Phone[] heard, (Phone[] Sounds, SoundingPhrase Phrase)[] phrases, double most)
    {
        foreach (var (sounds, phrase) in phrases)
        {
            if (SoundAlignment.Distance(heard, sounds, most) is { } cost && !(near.TryGetValue(phrase, out var known) && known <= cost))
            {
                near[phrase] = cost;
            }
        }
    }
}
