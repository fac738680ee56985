using AngleSharp.Dom;
using InspectLog.Paper.Blocks;

namespace InspectLog.App.Reports.Printing;

/// <summary>What the classes of a report's markup look like on paper: what <c>report.css</c> says of print, in points. Pure.
/// </summary>
internal static class PaperLooks
{
    /// <summary>Size of most text, points.</summary>
    public const double Body = 9.5;

    /// <summary>Size of what is said beside it, points.</summary>
    public const double Small = 8.5;

    /// <summary>Size of the summary, points.</summary>
    public const double Lead = 11;

    public static readonly Ink Soft = Ink.Of(0x3A4146);
    public static readonly Ink Line = Ink.Of(0xB9B4AA);
    public static readonly Ink Doubt = Ink.Of(0x5D3F00);

    private static readonly string[] NotShown =
        ["no-paper", "unseen", "buttons", "strip-small", "strip-narrow"];

    private static readonly string[] SmallOnes = ["small", "provenance", "later", "used-for", "remedies", "photo-remark", "foot"];

    private static readonly string[] SoftOnes = ["soft", "provenance", "used-for", "photo-remark", "foot"];

    /// <summary>Whether an element is for the screen alone.</summary>
    public static bool IsLeftOut(IElement element) =>
        element.LocalName is "form" or "button" or "script" or "style" or "template" || element.HasAttribute("hidden") || NotShown.Any(element.ClassList.Contains);

    /// <summary>A paragraph as an element has it: its own classes, and what it stands in.</summary>
    public static Block.Paragraph Paragraph(IElement of, IReadOnlyList<Inline> words) => new(words)
    {
        Size = Is(of, "lead") ? Lead : Is(of, SmallOnes) || of.Closest("figcaption, table.budget, ul.remedies") is not null ? Small : Body,
        Ink = Is(of, "attention") ? Doubt : Is(of, SoftOnes) || of.Closest("figcaption") is not null ? Soft : Ink.Black,
        IsBold = Is(of, "attention") || of.LocalName == "summary" || (of.Closest("th") is { } header && header.Closest("table.budget") is null && !Is(of, "used-for")),
        KeepsNext = of.LocalName == "summary",
        IsAtTheRight = of.Closest("td.figure, th.figure") is not null,
        Above = of.Closest("footer") is not null ? 24
            : of.LocalName == "summary" ? 6
            : Is(of, "lead") && of.PreviousElementSibling is null ? 12
            : Is(of, "place") ? 3 : 4,
    };

    /// <summary>Colour of the mark before a decision, by what it stands in: its shape says the same.</summary>
    public static Ink MarkOf(IElement mark) => mark.Closest(".is-good, .is-doubtful, .is-bad, li")?.QuerySelector("strong[class]") is var strong
        && (mark.Closest(".is-good, .is-doubtful, .is-bad") ?? strong) is { } told
            ? told.ClassList.Contains("is-good") ? Ink.Of(0x2F6B52)
            : told.ClassList.Contains("is-bad") ? Ink.Of(0x9C3B20)
            : told.ClassList.Contains("is-doubtful") ? Doubt
            : Soft
        : Soft;

    private static bool Is(IElement element, params string[] classes) =>
        classes.Any(one => element.ClassList.Contains(one) || (element.ParentElement?.ClassList.Contains(one) ?? false));
}
