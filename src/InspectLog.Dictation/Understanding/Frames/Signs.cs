using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Takes the words that change what others mean: negations, "all" and "except", corrections, doubts.</summary>
internal sealed class Signs(
    Draft draft, Subjects subjects, Values values, Conditions conditions, Settings settings, Gauges gauges, IReadOnlyList<Token> tokens)
{
    public void Take(Item item)
    {
        switch (item.Role)
        {
            case Role.Not:
                draft.Negated = true;
                break;
            case Role.DoesNot:
                gauges.DoesNot();
                break;
            case Role.Does:
                gauges.Does();
                break;
            case Role.Stops when IsSize(item):
                break;
            case Role.Goes or Role.Stops:
                gauges.Mark(goes: item.Role == Role.Goes);
                break;
            case Role.Nothing when draft.Ahead(later => later.Role is not (Role.Filler or Role.Verb or Role.Was)) is { Condition: true }:
                NoneOf(item);
                break;
            case Role.Nothing:
                conditions.Nothing(item);
                break;
            case Role.Yes:
                conditions.Yes(item);
                break;
            case Role.Absent when tokens[item.First].IsWord("gone") && draft.At + 1 < draft.Items.Count && draft.Items[draft.At + 1].Condition:
                // "The spark's gone weak."
                break;
            case Role.Absent:
                conditions.Absent(item);
                break;
            case Role.Bad:
                conditions.Bad(item);
                break;
            case Role.Pronoun:
                Pronoun(item);
                break;
            case Role.Same:
                Same(item);
                break;
            case Role.Correct or Role.Retract:
                settings.End();
                draft.Repair = new Repair { Retracts = item.Role == Role.Retract };
                (draft.Negated, draft.Excepting) = (false, false);
                break;
            case Role.All or Role.Any or Role.Both or Role.Rest or Role.Neither:
                subjects.Set(item.Role, item);
                break;
            case Role.Except:
                subjects.Except(item);
                break;
            case Role.Now:
                draft.Frame.Now = true;
                break;
            case Role.Bound when tokens[item.First].IsWord("and"):
                values.Roughly();
                break;
            case Role.Bound:
                draft.ValueDoubt = Values.Bounded;
                break;
            case Role.Hedge:
                draft.Frame.Doubt = "said with a doubt";
                break;
            case Role.Looked:
                draft.Frame.Looked = true;
                break;
        }
    }

    // "The gap's too big, one point three": no gauge was spoken of.
    private bool IsSize(Item item) => tokens[item.Next - 1].Stem is "big" or "tight" or "thick" && draft.Frame is { Mentioned: true, Says: false };

    // "None cracked": of all, not cracked.
    private void NoneOf(Item item)
    {
        if (tokens[item.First].Stem == "none")
        {
            subjects.Set(Role.All, item);
        }

        draft.Negated = true;
    }

    // After a comma "it" and "they" begin anew.
    private void Pronoun(Item item)
    {
        var tried = draft.Frame.Predicates is [.., ValueSaid { Goes: null, Check.Measurand.Gauge: true }] && draft.Ahead() is { Role: Role.DoesNot or Role.Does or Role.Goes or Role.Stops };
        if (draft is { Separated: true, Frame.Says: true, Repairing: false } && !tried)
        {
            draft.Open();
            draft.Negated = false;
        }

        draft.Frame.Them |= tokens[item.First].IsWord("them");
        draft.Frame.Singular |= tokens[item.First].IsWord("it");
    }

    private void Same(Item item)
    {
        if (draft.Frame.Says)
        {
            draft.Open();
        }

        draft.Frame.Echo = Echo.Same;
        draft.PlaceMarked = tokens[item.Next - 1].Stem is "on" or "for" or "with" || draft.Ahead() is { Number: true };
        draft.Preposition = draft.PlaceMarked;
    }
}
