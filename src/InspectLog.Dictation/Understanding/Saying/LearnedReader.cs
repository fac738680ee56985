using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Dictation.Understanding.Saying;

/// <summary>Reads findings from a text by the likeliest of all its readings. Pure: the same text always gives the same
/// findings.</summary>
internal sealed class LearnedReader
{
    private readonly SheetLexicon _lexicon;
    private readonly ReaderModel _model;
    private readonly Decoder _decoder;

    public LearnedReader(CheckSheet sheet, IReadOnlyList<OwnWord>? ownWords = null, ReaderModel? model = null)
    {
        _lexicon = new(sheet, ownWords ?? [], SpokenLanguage.English);
        _model = model ?? ReaderModel.Shipped;
        _decoder = new(_model.Choices);
    }

    /// <summary>The findings of a text, in the order spoken.</summary>
    public IReadOnlyList<Finding> Read(string text, string? openCheck = null)
    {
        var open = openCheck is null ? null : _lexicon.Checks.FirstOrDefault(check => check.Check.Id == openCheck);
        var note = new Note(_lexicon, text, open, _model);
        if (note.Length == 0)
        {
            return [];
        }

        Interpreter.JudgeTalk(note, _model.Talk);
        var readings = _decoder.Read(note);
        if (readings.Count == 0)
        {
            return []; // a heap of figures, of which the search kept none that comes to an end
        }

        var outcome = Interpreter.Likeliest(readings, _model.Wholes);
        return [.. InOrder(outcome).Select(belief => Write(outcome, belief))];
    }

    // Of a setting and the values it was set to, the values come first.
    private static List<Belief> InOrder(Outcome outcome)
    {
        var ordered = new List<Belief>();
        foreach (var belief in PlacesSaid.Of(outcome))
        {
            var at = ordered.Count;
            while (belief.Claim.Kind == FindingKind.Reading && at > 0 && ordered[at - 1] is { Claim: { Action: PartActions.Adjusted } claim } && claim.Check == belief.Claim.Check)
            {
                at--;
            }

            ordered.Insert(at, belief);
        }

        return ordered;
    }

    private Finding Write(Outcome outcome, Belief belief)
    {
        var (claim, note) = (belief.Claim, outcome.Reading.Scene.Note);
        var check = _lexicon.Checks[claim.Check].Check;
        var (start, end) = FindingWords.Of(outcome.Reading.Scene, belief.Found, belief.Place);
        return new(
            claim.Kind,
            check.Id,
            belief.Place == 0 ? null : new(belief.Place),
            claim.Value,
            claim.Kind == FindingKind.Reading ? Measuring.Units.BaseOf(check.Measurand!.Kind).Symbol : null,
            claim.Bracket,
            claim.Condition < 0 ? null : check.Conditions[claim.Condition].Id,
            claim.Negated,
            claim.Action,
            note.Text[start..end],
            start,
            end,
            Marking.IsPlain(_model, outcome, belief) ? default : DoubtReasons.Of(outcome, belief));
    }
}
