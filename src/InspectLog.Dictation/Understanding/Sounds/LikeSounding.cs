using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>Takes words for others that sound the same where only those can stand. Unlike <see cref="SoundRepair"/> it
/// looks at known words too, and at nothing but their neighbours.</summary>
internal sealed class LikeSounding(CheckSheet sheet, Lexicon lexicon, Lazy<SoundLexicon> sounds)
{
    private readonly Func<TakenText, TakenText>[] _steps =
    [
        DeadCentre.In,
        new FiguresForWords(lexicon).In,
        new SharedSounds(lexicon).In,
        new SoundAlikes(lexicon).In,
        new Homophones(sheet, lexicon).In,
        new DueActions(sounds, lexicon).In,
    ];

    private readonly LostEndings _endings = new(lexicon);

    /// <summary>A text, written or heard.</summary>
    public TakenText Take(IReadOnlyList<Token> tokens) =>
        _steps.Aggregate(TakenText.AsWritten(tokens), (text, step) => step(text));

    /// <summary>A text that was heard for certain, so that sounds may be lost that are never lost in writing.</summary>
    public TakenText TakeHeard(IReadOnlyList<Token> tokens) => _endings.In(Take(tokens));
}
