namespace InspectLog.Dictation.Hearing;

/// <summary>What was written down each time one clip was heard.</summary>
/// <param name="first">The first hearing.</param>
/// <param name="examples">The examples later ones may have been given: one that only repeats an example heard nothing.</param>
internal sealed class Hearings(DecodedClip first, string? examples)
{
    /// <summary>A later hearing has to be better by this, in mean logarithm of probability, to be taken.</summary>
    private const double BetterBy = 0.05;

    /// <summary>The most that is left of the probability of a word that another hearing does not have: less than any
    /// word needs to pass for clearly heard.</summary>
    private static readonly double MostWhereHearingsDiffer = Math.Log(0.25);

    private readonly List<DecodedClip> _others = [];

    /// <summary>The best so far, as its decoder wrote it.</summary>
    public DecodedClip Best { get; private set; } = first;

    /// <summary>Adds a later hearing.</summary>
    public void Add(DecodedClip heard)
    {
        if (heard.Text.Length == 0 || IsAnExample(heard))
            return;

        var (better, worse) = IsBetter(heard, Best) ? (heard, Best) : (Best, heard);
        Best = better;
        _others.Add(worse);
    }

    /// <summary>The best, in which words that any other hearing lacks are less probable than the decoder thought.</summary>
    public DecodedClip BestWithDoubt()
    {
        var pieces = Best.Pieces.ToArray();
        foreach (var shared in _others.Select(other => SharedPieces.Of(Best.Pieces, other.Pieces)))
        {
            for (var i = 0; i < pieces.Length; i++)
            {
                if (!shared[i])
                    pieces[i] = pieces[i] with { LogProbability = Math.Min(pieces[i].LogProbability, MostWhereHearingsDiffer) };
            }
        }

        return Best with { Pieces = pieces };
    }

    private static bool IsBetter(DecodedClip later, DecodedClip best) => (GoesRound(later), GoesRound(best)) switch
    {
        (true, false) => false,
        (false, true) => true,
        _ => later.MeanLogProbability > best.MeanLogProbability + BetterBy,
    };

    private static bool GoesRound(DecodedClip heard) => heard.Loops() || heard.IsSaidTwice();

    private bool IsAnExample(DecodedClip heard) =>
        examples?.Split(". ").Any(example => string.Equals(Bare(example), Bare(heard.Text), StringComparison.OrdinalIgnoreCase)) == true;

    private static string Bare(string sentence) => sentence.Trim('.', ' ');
}
