using System.Text;
using AngleSharp.Dom;
using InspectLog.Paper.Blocks;

namespace InspectLog.App.Reports.Printing;

/// <summary>Gathers the words of a paragraph from markup, with white space as browsers show it. Pure.</summary>
internal sealed class PaperWords
{
    private readonly List<Inline> _words = [];
    private bool _afterSpace = true;

    /// <summary>Takes what a node says.</summary>
    public void Add(INode node) => Add(node, new());

    /// <summary>The words so far; then it begins anew.</summary>
    public IReadOnlyList<Inline> Take()
    {
        Inline[] taken = [.. _words];
        if (taken is [.., Inline.Text last])
        {
            taken[^1] = last with { Words = last.Words.TrimEnd(' ') };
        }

        _words.Clear();
        _afterSpace = true;
        return taken.Any(one => one is Inline.Mark || (one is Inline.Text text && text.Words.Length > 0)) ? taken : [];
    }

    private void Add(INode node, Look look)
    {
        if (node is IText text)
        {
            Add(text.Data, look);
        }
        else if (node is IElement element && !PaperLooks.IsLeftOut(element))
        {
            if (element.LocalName == "br")
            {
                _words.Add(new Inline.Text("\n"));
                _afterSpace = true;
            }
            else if (element.LocalName == "svg")
            {
                _words.Add(new Inline.Mark(PaperDrawings.MarkOf(element)));
                _afterSpace = true;
            }
            else
            {
                var own = look.Within(element);
                foreach (var child in element.ChildNodes)
                {
                    Add(child, own);
                }
            }
        }
    }

    private void Add(string data, Look look)
    {
        var shown = new StringBuilder();
        foreach (var letter in data)
        {
            var isSpace = letter is ' ' or '\t' or '\n' or '\r' or '\f';
            if (!isSpace || !_afterSpace)
            {
                shown.Append(isSpace ? ' ' : letter);
            }

            _afterSpace = isSpace;
        }

        if (shown.Length > 0)
        {
            _words.Add(new Inline.Text(shown.ToString(), look.IsBold, look.Ink, look.Scale));
        }
    }

    private readonly record struct Look(bool IsBold = false, Ink? Ink = null, double Scale = 1)
    {
        public Look() : this(false)
        {
        }

        public Look Within(IElement element) => new(
            IsBold || element.LocalName is "strong" or "b",
            element.ClassList.Contains("soft") ? PaperLooks.Soft : element.ClassList.Contains("attention") ? PaperLooks.Doubt : Ink,
            element.ClassList.Contains("small") && Scale >= 1 ? 0.9 : Scale);
    }
}
