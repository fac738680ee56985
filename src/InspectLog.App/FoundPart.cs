namespace InspectLog.App;

/// <summary>The part of a page that somebody searched for. The address names it, so that the page can say so in words
/// and open the fold it is in; a fragment never reaches the server.</summary>
public static class FoundPart
{
    /// <summary>Name of the part in an address.</summary>
    public const string Parameter = "found";

    /// <summary>The head of a bench.</summary>
    public const string Inspection = "this-inspection";

    /// <summary>Why the open check is left out.</summary>
    public const string LeftOut = "left-out-because";

    /// <summary>The part an address names; null where it names none.</summary>
    public static string? Of(HttpRequest request) => request.Query[Parameter] is [{ Length: > 0 } id, ..] ? id : null;
}
