using AngleSharp.Dom;
using InspectLog.Paper.Blocks;

namespace InspectLog.App.Reports.Printing;

/// <summary>Takes over the markup of a report for paper. The report is put together once, as a page; this decides nothing of
/// what it says, and only how it stands on paper. Pure.</summary>
/// <param name="pictures">Clean copies of its photos, by their address.</param>
internal sealed class PaperBlocks(IReadOnlyDictionary<string, byte[]?> pictures)
{
    private const double PhotoHeight = 185, HeadPictureHeight = 160, StripWidth = 340, CodeWidth = 96, BarHeight = 8;

    private static readonly string[] Blocks =
    [
        "address", "article", "details", "div", "dl", "figcaption", "figure", "footer", "header", "h1", "h2", "h3", "h4", "h5", "h6", "img", "li",
        "main", "ol", "p", "section", "summary", "table", "ul",
    ];

    /// <summary>What an element holds, one below the other.</summary>
    public IReadOnlyList<Block> Within(IElement parent) => Of(parent, parent.ChildNodes);

    private List<Block> Of(IElement parent, IEnumerable<INode> nodes)
    {
        var blocks = new List<Block>();
        var words = new PaperWords();
        void Flush()
        {
            if (words.Take() is { Count: > 0 } taken)
            {
                blocks.Add(PaperLooks.Paragraph(parent, taken));
            }
        }

        foreach (var node in nodes)
        {
            if (node is not IElement element)
            {
                words.Add(node);
            }
            else if (!IsBlock(element))
            {
                words.Add(element);
            }
            else if (!PaperLooks.IsLeftOut(element))
            {
                Flush();
                Add(blocks, Of(element));
            }
        }

        Flush();
        return blocks;
    }

    /// <summary>What is said above photos stays on their page.</summary>
    private static void Add(List<Block> blocks, IReadOnlyList<Block> next)
    {
        if (next is [Block.Beside { IsList: true } photos] && blocks is [.., not Block.Heading and var above])
        {
            blocks[^1] = new Block.Group(GroupTag.None, [above, photos]) { IsKeptTogether = true, Above = above.Above };
        }
        else
        {
            blocks.AddRange(next);
        }
    }

    private IReadOnlyList<Block> Of(IElement element) => element.LocalName switch
    {
        "h1" or "h2" or "h3" or "h4" or "h5" or "h6" => [Heading(element)],
        "section" => [Group(GroupTag.Section, element)],
        "article" => [Group(GroupTag.Article, element)],
        "ul" or "ol" when element.ClassList.Contains("shots") => [Photos(element)],
        "ul" or "ol" => [List(element)],
        "table" => [PaperTables.Of(element, this)],
        "img" => [Picture(element)],
        "svg" when element.ClassList.Contains("marked") => [Marked(element)],
        "svg" => [Drawing(element)],
        _ when element.ClassList.Contains("signatures") => [Signatures(element)],
        _ when element.ClassList.Contains("place") => Place(element),
        _ when IsKeptTogether(element) || BarOf(element) is not null => [Group(GroupTag.None, element)],
        _ => Within(element),
    };

    /// <summary>Whether an element stands below what is before it, and not within a line.</summary>
    private static bool IsBlock(IElement element) =>
        Blocks.Contains(element.LocalName)
        || (element.LocalName == "svg" && !element.ClassList.Contains("mark"))
        || (element.LocalName is "span" or "a" && (element.ClassList.Contains("used-for") || element.ClassList.Contains("later") || element.QuerySelector("img") is not null));

    private static Block.Heading Heading(IElement element)
    {
        var words = new PaperWords();
        words.Add(element);
        var level = element.LocalName[1] - '0';
        return new(level, words.Take()) { Above = level switch { 1 => 2, 2 => 20, _ => 13 } };
    }

    private Block.Group Group(GroupTag tag, IElement element) => new(tag, Within(element))
    {
        Bar = BarOf(element),
        IsKeptTogether = IsKeptTogether(element),
        Above = element.ClassList.Contains("later") ? 2 : 6,
    };

    /// <summary>What was found at a place and its drawing stay on one page. The budget below them may go to the next.</summary>
    private List<Block> Place(IElement place)
    {
        var found = place.ChildNodes.TakeWhile(node => node is not IElement { LocalName: "details" }).ToList();
        return
        [
            new Block.Group(GroupTag.None, Of(place, found)) { IsKeptTogether = true, Above = place.ClassList.Contains("brief") ? 2 : 6 },
            .. Of(place, place.ChildNodes.Skip(found.Count)),
        ];
    }

    private static Ink? BarOf(IElement element) =>
        element.ClassList.Contains("later") ? PaperLooks.Line : element.ClassList.Contains("doubt") ? PaperLooks.Doubt : null;

    private static bool IsKeptTogether(IElement element) =>
        element.ClassList.Contains("sealed");

    private Block.Bullets List(IElement list) => new(
        [.. list.Children.Where(item => item.LocalName == "li" && !PaperLooks.IsLeftOut(item)).Select(Within)],
        HasDots: !list.ClassList.Contains("plain"))
    {
        Above = 5,
    };

    private Block.Beside Photos(IElement list) => new(
        2, [.. list.Children.Where(item => item.LocalName == "li").Select(Within)]) { IsList = true, Above = 8 };

    private Block.Beside Signatures(IElement element) => new(
        2, [.. element.Children.Select(one => Of(element, [one]).ConvertAll(block => block is Block.Paragraph words ? words with { Size = PaperLooks.Small } : block))])
    {
        IsRuled = true,
        Above = 10,
    };

    private Block.Picture Picture(IElement image) => new(
        image.GetAttribute("alt") ?? "",
        pictures.GetValueOrDefault(image.GetAttribute("src") ?? ""),
        image.Closest(".report-picture") is null ? PhotoHeight : HeadPictureHeight) { Above = 6 };

    /// <summary>A photo with marks over it.</summary>
    private Block.Picture Marked(IElement svg) => new(
        svg.QuerySelector("title")?.TextContent ?? "",
        pictures.GetValueOrDefault(svg.QuerySelector("image")?.GetAttribute("href") ?? ""),
        PhotoHeight)
    {
        Above = 6,
        Over = PaperDrawings.MarksOf(svg),
    };

    private static Block.Drawn Drawing(IElement svg) => svg.ClassList.Contains("qr")
        ? new(PaperDrawings.Of(svg), svg.GetAttribute("aria-label"), CodeWidth) { Above = 8 }
        : svg.ClassList.Contains("strip")
        ? new(PaperDrawings.Of(svg), null, StripWidth) { Above = 4 }
        : new(PaperDrawings.Of(svg), null, double.MaxValue, BarHeight) { Above = 3 };
}
