using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Doubting;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Takes the values said of a subject.</summary>
internal sealed class Values(Draft draft, FrameBreaks breaks, Settings settings, Gauges gauges, IReadOnlyList<Token> tokens)
{
    /// <summary>Why a value said as "just under two" is to be looked at.</summary>
    public const string Bounded = "only a bound was said, not the value";

    public void Take(Check check, ValueNumber value, bool nameless)
    {
        if (settings.IsOpen && value.First == draft.Item.First && draft.Before is { Role: Role.Preposition } by && tokens[by.First].IsWord("by"))
        {
            // "Advanced it by two degrees" tells how far, not where to.
            draft.AfterPredicate();
            return;
        }

        if (draft.Negated)
        {
            // "Not twelve": the value that it is not. But "point three goes, not point three five".
            draft.Negated = false;
            var blade = draft.Ahead(later => later.Role != Role.Filler && !later.Subject);
            var tried = check.Measurand!.Gauge && blade is { Role: Role.Preposition } last && tokens[last.First].IsWord("in");
            if (!tried && (draft.Frame.Predicates is not [.., ValueSaid { Goes: true } goes] || goes.Check != check))
            {
                return;
            }

            gauges.Ahead(goes: false);
        }

        breaks.Predicate();
        draft.Replace<ValueSaid>();
        DropBound(check);
        draft.Frame.Predicates.Insert(Place(check), new ValueSaid(value.First, value.Next, check, value)
        {
            Doubt = Doubts.Join(value.Doubt, draft.ValueDoubt),
            Goes = gauges.TakeAhead(),
            Nameless = nameless,
        });
        settings.Value();
        (draft.ValueDoubt, draft.ValueWas) = (null, false);
        draft.AfterPredicate();
    }

    // "Is ten, was twelve": in the order in which they were read.
    private int Place(Check check) => draft.ValueWas && draft.Frame.Predicates is [.., ValueSaid later] && later.Check == check
        ? draft.Frame.Predicates.Count - 1
        : draft.Frame.Predicates.Count;

    /// <summary>"Twelve and a bit": the value just said is only a bound.</summary>
    public void Roughly()
    {
        if (draft.Frame.Predicates is [.., ValueSaid value])
        {
            draft.Frame.Predicates[^1] = value with { Doubt = Doubts.Join(value.Doubt, Bounded) };
        }
    }

    // "Just over nine k, nine point one": the value itself goes before its bound.
    private void DropBound(Check check)
    {
        if (draft is { Comma: true, ValueDoubt: null, Frame.Predicates: [.., ValueSaid { Doubt: Bounded } bound] } && bound.Check == check)
        {
            draft.Frame.Predicates.Remove(bound);
        }
    }
}
