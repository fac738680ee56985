namespace InspectLog.Dictation.Understanding.Language;

/// <content>Forms a phrase takes besides the one a sheet writes.</content>
internal sealed partial class SpokenLanguage
{
    /// <summary>The words between the two words of a name said the other way round: "gap of the plug".</summary>
    public IReadOnlyList<string[]> Links { get; }

    /// <summary>Articles, which a name is also said without.</summary>
    public IReadOnlySet<string> Articles { get; }

    /// <summary>A phrase that says where a thing is, with the other little words people tie it with: "in the wrong hole",
    /// "on its wrong hole", "wrong hole".</summary>
    public IEnumerable<string[]> Tied(string[] stems)
    {
        if (stems.Length < 3 || !_ties.Contains(stems[0]))
        {
            yield break;
        }

        var rest = stems[(Articles.Contains(stems[1]) ? 2 : 1)..];
        if (rest.Length < 2)
        {
            yield break;
        }

        yield return rest;
        foreach (var tie in _ties)
        {
            yield return [tie, .. rest];
            foreach (var article in File.Articles)
            {
                yield return [tie, article, .. rest];
            }
        }
    }
}
