using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Takes what is spoken of: parts, quantities and cylinders.</summary>
internal sealed class Subjects(Draft draft, FrameBreaks breaks, Lexicon lexicon, IReadOnlyList<Token> tokens)
{
    public void Mention(Item item)
    {
        EndOpeningException();
        if (draft.Excepting)
        {
            draft.Frame.Cover(item.First, item.Next);
            draft.PlaceMarked = true;
            return;
        }

        var none = draft.Before is { Role: Role.Not } not && tokens[not.First].Stem == "no" && lexicon.IsPlaceNoun(tokens[item.Next - 1].Stem);
        breaks.Subject(place: false);
        var frame = draft.Frame;
        var words = NamedWords(tokens, item);
        if (draft is { Repairing: true, Repair: { SubjectSaid: false } repair })
        {
            repair.SubjectSaid = true;
            if (!words.All(frame.Bag.Contains))
            {
                frame.Mentions.Clear();
            }
        }

        // "Burnt at the boot" says where on the part, and names no other part.
        if (!(frame is { Says: true, SubjectBefore: true, Mentioned: true } && !draft.Repairing))
        {
            Add(frame, item, words);
        }

        var marks = lexicon.IsPlaceNoun(tokens[item.Next - 1].Stem);
        draft.AfterSubject();
        draft.PlaceMarked = marks;
        if (none && draft.Frame.Set == PlaceSet.None)
        {
            // "No lead is cracked" speaks of every lead.
            draft.Frame.Set = PlaceSet.All;
        }
    }

    private void Add(Frame frame, Item item, List<NamedWord> words)
    {
        if (!frame.Mentioned || draft.Separated && draft.SubjectJustSaid && (!frame.Says || !frame.SubjectBefore))
        {
            frame.Mentions.Add([]);
        }

        frame.Mentions[^1].AddRange(words);
        var last = tokens[item.Next - 1];
        frame.Plural |= Enumerable.Range(item.First, item.Next - item.First).Any(i => tokens[i].Plural && lexicon.IsPlaceNoun(tokens[i].Stem));
        frame.PluralName |= last.Plural;
        frame.Its |= item.First > 0 && tokens[item.First - 1].Text == "its";
        frame.Foreign |= IsCompound(item);
        frame.Cover(item.First, item.Next);
    }

    public static List<NamedWord> NamedWords(IReadOnlyList<Token> tokens, Item item)
    {
        var stems = Enumerable.Range(item.First, item.Next - item.First).Select(i => tokens[i].Stem).ToList();
        var phrase = string.Join(' ', stems);
        return [.. stems.Select(stem => new NamedWord(stem, phrase))];
    }

    // "Lead guitarist": a part's name right before an unknown noun belongs to that noun.
    private bool IsCompound(Item item) =>
        draft.At + 1 < draft.Items.Count && draft.Items[draft.At + 1] is { Role: Role.Unknown, Number: false, Subject: false } next
        && next.Actions.Count == 0 && !next.Condition && next.Ordinal is null
        && tokens[next.First].Text is var text && text is not ("test" or "check") && !text.EndsWith('s') && !text.EndsWith("ed", StringComparison.Ordinal)
        && !text.EndsWith("ing", StringComparison.Ordinal) && tokens[item.Next - 1] is { Plural: false } noun
        && lexicon.IsPlaceNoun(noun.Stem) && !draft.Frame.Placed;

    public void Place(PlaceNumbers place)
    {
        var cylinder = tokens[Math.Max(0, place.First - 1)].Stem == "cylinder";
        if (draft.Excepting)
        {
            draft.Frame.Except.AddRange(place.Cylinders);
        }
        else if (draft is { Repairing: true, Repair: { } repair } && draft.Frame.Places.Count > 0)
        {
            repair.SubjectSaid = true;
            draft.Frame.Places[^1] = place;
        }
        else
        {
            breaks.Subject(place: true);
            draft.Frame.ExceptOf?.Except.AddRange(place.Cylinders);
            draft.Frame.Places.Add(place);
            draft.Frame.PlaceIsCylinder |= cylinder;
        }

        draft.Frame.Cover(place.First, place.Next);
        draft.AfterSubject();
    }

    public void Set(Role role, Item item)
    {
        // "All good except two and three, both cracked": both are the exceptions.
        if (role == Role.Both && draft.Frame is { Says: true, Except.Count: > 0 })
        {
            breaks.OpenException(draft.Frame);
            return;
        }

        EndOpeningException();
        if (SaidOfAll(role, item))
        {
            draft.Frame.Set = PlaceSet.All;
            draft.Frame.Cover(item.First, item.Next);
            return;
        }

        breaks.Subject(place: true);
        draft.Frame.Set = role switch
        {
            Role.Any => PlaceSet.Any,
            Role.Both => PlaceSet.Both,
            Role.Rest => PlaceSet.Rest,
            _ => PlaceSet.All,
        };
        draft.Negated |= role == Role.Neither;
        draft.Frame.Cover(item.First, item.Next);
        draft.AfterSubject();
    }

    // "Leads two to four nine k each", "gaps thirty two all round".
    private bool SaidOfAll(Role role, Item item) => role == Role.All && draft is { Separated: false, Frame: { Says: true, HasSubject: true } }
        && tokens[item.First].Stem is "each" or "all" or "throughout" or "across" or "apiece"
        && draft.Ahead() is null or { Role: Role.Comma or Role.And or Role.But or Role.Except };

    public void Except(Item item)
    {
        if (tokens[item.First].Stem == "all")
        {
            Set(Role.All, item);
        }

        if (draft.Frame.HasSubject && draft.Ahead() is { Condition: true })
        {
            // "All clean apart from some corrosion on two": what is said of the exceptions comes before them.
            var all = draft.Frame;
            draft.Open();
            draft.Frame.ExceptOf = all;
            all.ExceptTaken = true;
            return;
        }

        draft.Excepting = true;
        draft.AfterSubject();
    }

    // "Apart from four, the leads are fine": what comes after the exception is what it is left out of.
    private void EndOpeningException()
    {
        if (draft is { Excepting: true, Frame: { Says: false, Mentioned: false, Set: PlaceSet.None, Except.Count: > 0 } })
        {
            draft.Excepting = false;
        }
    }

    /// <summary>"But" after "every cylinder" leaves cylinders out, where some follow.</summary>
    public bool ButExcepts() =>
        (draft.Frame.Set == PlaceSet.All || draft.Frame is { Plural: true, Says: true, Placed: false })
        && draft.Ahead(item => item.Role is not (Role.Filler or Role.PlaceMark or Role.Preposition) && !(item.Subject && !item.Condition))
            is { } next && (next.Number || next.Ordinal is not null || next.Group is not null);

    /// <summary>A part that no check is about.</summary>
    public void Other()
    {
        var aside = draft.Preposition && draft.Frame.HasSubject;
        if (!aside && draft.Frame is { Says: true, HasSubject: true } && draft.Separated)
        {
            draft.Open();
        }

        draft.Frame.Foreign |= !aside && !(draft.Frame.Says && draft.Frame.Mentioned);
    }
}
