using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Tells from what stands around it what a small word or a number does.</summary>
internal sealed class Surroundings(Draft draft, Lexicon lexicon, IReadOnlyList<Token> tokens)
{
    /// <summary>"Tower four is dirty and tower six too": what was said before holds for it as well.</summary>
    public bool Likewise(Item item) =>
        tokens[item.Next - 1].Stem is "also" or "too" or "well" && draft.Frame is { HasSubject: true, Says: false }
        && draft.Frames.Count > 1 && draft.Frames[^2].Says && draft.Ahead() is null or { Role: Role.Comma or Role.And };

    /// <summary>"The lead in the pencil": part of something else.</summary>
    public bool NamesWhole(Item item) =>
        item.First > 2 && (Role.OtherPart == item.Role && Within(item.First - 1) || Article(item.First - 1) && (tokens[item.First - 2].Stem is "in" or "of" || Within(item.First - 2) && (draft.Ahead() is { Role: Role.Verb or Role.Was } || item.Next < tokens.Count && tokens[item.Next].IsWord("of")))
            || item.First > 3 && (item.Role == Role.OtherPart && Article(item.First - 1) && Within(item.First - 2)
                || tokens[item.First - 1].Stem is "my" or "his" or "your" or "their" && Within(item.First - 2)))
        && draft is { SubjectJustSaid: true, Frame: { Mentioned: true, Placed: false, Says: false, Plural: false } };

    private bool Article(int at) => tokens[at].Stem is "the" or "a" or "that" or "this" or "front" or "rear";

    private bool Within(int at) => tokens[at].Stem is "in" or "of" or "on" or "for" or "from";

    /// <summary>"Two bolts", "two of the bolts": how many other parts, not which cylinder.</summary>
    public bool CountsOthers(Item item) =>
        item.Role == Role.OtherPart && tokens[item.Next - 1].Plural
        && (IsCount(item.First - 1) || item.First > 2 && Article(item.First - 1) && tokens[item.First - 2].IsWord("of") && IsCount(item.First - 3));

    private bool IsCount(int at) => at >= 0 && SmallNumber(at) is not null;

    /// <summary>"I can get point three in": the gauge goes.</summary>
    public bool GoesIn(Item item) =>
        tokens[item.First].IsWord("in") && draft.Frame.Predicates is [.., ValueSaid { Goes: null, Check.Measurand.Gauge: true }]
        && draft.Before is { Number: true } or { Subject: true } && draft.Ahead() is null or { Role: Role.Comma or Role.But or Role.And };

    /// <summary>"On three towers", "two of the leads": how many, which are still to be named.</summary>
    public int? CountsNamed(Item item)
    {
        if (!draft.PlaceMarked && SmallNumber(item.First) is { } of && item.First + 2 < tokens.Count && tokens[item.First + 1].IsWord("of")
            && tokens[item.First + 2].Stem is "them" or "these" or "those")
        {
            return of;
        }

        if (item.Next == item.First + 1 && draft.Frame is { Counted: > 0, Placed: false } && draft.Before?.Role == Role.Filler && PluralPart(draft.At + 1))
        {
            // "Five of the six leads".
            return draft.Frame.Counted;
        }

        if (item.Next != item.First + 1 || draft.PlaceMarked || draft.Excepting || draft.Frame.Placed || SmallNumber(item.First) is not { } count)
        {
            return null;
        }

        var part = draft.At + 1;
        if (part + 1 < draft.Items.Count && tokens[draft.Items[part].First].IsWord("of"))
        {
            part += tokens[draft.Items[part + 1].First].Stem is "the" or "these" or "those" or "my" ? 2 : 1;
        }

        return PluralPart(part) || part + 1 < draft.Items.Count && draft.Items[part].Number && PluralPart(part + 1) ? count : null;
    }

    private bool PluralPart(int at) => at < draft.Items.Count && draft.Items[at] is { Subject: true } named
        && tokens[named.Next - 1].Plural && lexicon.IsPlaceNoun(tokens[named.Next - 1].Stem);

    private int? SmallNumber(int at)
    {
        var number = NumberWords.Unit(tokens[at].Stem)
            ?? (tokens[at] is { Kind: TokenKind.Digits, Lead: '\0', Text.Length: 1 } digit ? digit.Text[0] - '0' : 0);
        return number > 1 ? number : null;
    }

    /// <summary>"Twelve plugs": how many there are.</summary>
    public bool CountsParts(ValueNumber value) =>
        !value.UnitSaid && value.Next == draft.Item.Next && value.Number == decimal.Truncate(value.Number)
        && draft.At + 1 < draft.Items.Count && draft.Items[draft.At + 1] is { Subject: true } part && tokens[part.Next - 1].Plural;
}
