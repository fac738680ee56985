namespace InspectLog.Paper.Blocks;

/// <summary>What is to be written to paper.</summary>
/// <param name="Title">Its title, which readers show in place of the file's name.</param>
/// <param name="Language">Its language, BCP 47.</param>
/// <param name="Blocks">What stands in it.</param>
public sealed record PaperDocument(string Title, string Language, IReadOnlyList<Block> Blocks)
{
    /// <summary>At the head of every page, left.</summary>
    public string HeadLeft { get; init; } = "";

    /// <summary>At the head of every page, right.</summary>
    public string HeadRight { get; init; } = "";

    /// <summary>At the foot of every page, left.</summary>
    public string FootLeft { get; init; } = "";

    /// <summary>At the foot of every page, right: of its number and of how many there are.</summary>
    public Func<int, int, string> PageNumber { get; init; } = (page, of) => $"{page} / {of}";

    /// <summary>What is said in place of a picture that cannot be shown.</summary>
    public string NoPicture { get; init; } = "No picture";

    /// <summary>Name and version of the program that made it.</summary>
    public string Program { get; init; } = "";

    /// <summary>When it was made.</summary>
    public DateTimeOffset Made { get; init; }
}
