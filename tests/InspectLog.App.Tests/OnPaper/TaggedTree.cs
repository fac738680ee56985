using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace InspectLog.App.Tests.OnPaper;

/// <summary>The structure tree of a PDF file, read by PdfPig.</summary>
/// <param name="Type">The type.</param>
/// <param name="Alt">The words in place of a figure; null for none.</param>
/// <param name="Scope">What a header cell names; null for none.</param>
/// <param name="Children">What is in it, without marked content.</param>
internal sealed record TaggedTree(string Type, string? Alt, string? Scope, IReadOnlyList<TaggedTree> Children)
{
    /// <summary>It and all within it, in the order of telling.</summary>
    public IEnumerable<TaggedTree> All => Children.SelectMany(child => child.All).Prepend(this);

    /// <summary>The tree of a file, from its document element on.</summary>
    public static TaggedTree Of(PdfDocument file)
    {
        var root = (DictionaryToken)Resolved(file, Catalog(file).Data["StructTreeRoot"]);
        return Of(file, (DictionaryToken)Resolved(file, root.Data["K"]));
    }

    /// <summary>What a file's catalog says.</summary>
    public static DictionaryToken Catalog(PdfDocument file) => file.Structure.Catalog.CatalogDictionary;

    /// <summary>What a token stands for.</summary>
    public static IToken Resolved(PdfDocument file, IToken token) =>
        token is IndirectReferenceToken reference ? file.Structure.GetObject(reference.Data).Data : token;

    private static TaggedTree Of(PdfDocument file, DictionaryToken element) => new(
        ((NameToken)element.Data["S"]).Data,
        element.Data.TryGetValue("Alt", out var alt) ? TextOf(Resolved(file, alt)) : null,
        element.Data.TryGetValue("A", out var about) && Resolved(file, about) is DictionaryToken attributes && attributes.Data.TryGetValue("Scope", out var scope) ? ((NameToken)scope).Data : null,
        element.Data.TryGetValue("K", out var kids) ? [.. Kids(file, Resolved(file, kids)).Select(kid => Of(file, kid))] : []);

    private static IEnumerable<DictionaryToken> Kids(PdfDocument file, IToken kids) =>
        (kids is ArrayToken several ? several.Data : [kids]).Select(kid => Resolved(file, kid)).OfType<DictionaryToken>().Where(kid => kid.Data.ContainsKey("S"));

    private static string TextOf(IToken text) => text switch
    {
        StringToken plain => plain.Data,
        HexToken hex => hex.Data,
        _ => "",
    };
}
