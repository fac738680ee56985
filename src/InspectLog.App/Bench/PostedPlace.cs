using System.Globalization;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Primitives;

namespace InspectLog.App.Bench;

/// <summary>Where a person was when a request was made, so that they are there again after it.</summary>
public static class PostedPlace
{
    /// <summary>The field or query that holds the address of the bench as it was shown.</summary>
    public const string Here = "here";

    /// <summary>The query that names the fold to open, where no script can.</summary>
    public const string Unfolded = "unfolded";

    /// <summary>The query that names the form all of whose places are ticked, where no script can.</summary>
    public const string Ticked = "ticked";

    /// <summary>What the address of a page asks for; null where it does not, and after a form.</summary>
    public static string? Asked(HttpRequest request, string what) =>
        HttpMethods.IsGet(request.Method) && request.Query[what].ToString() is { Length: > 0 } asked ? asked : null;

    /// <summary>Which check and place the page shows: by its own address on a GET; after a form by what the form was shown
    /// with, so that recording something does not turn the page. Where it does not say, by the address it was sent from.
    /// </summary>
    public static BenchFocus Focus(HttpRequest request)
    {
        var values = Shown(request);
        var cylinder = int.TryParse(
            values.GetValueOrDefault("place"), NumberStyles.None, CultureInfo.InvariantCulture, out var place)
            ? place
            : (int?)null;
        return new BenchFocus(values.GetValueOrDefault("check"), cylinder);
    }

    /// <summary>Id of the part of the page that was searched for; null where nothing was.</summary>
    public static string? Found(HttpRequest request) => Shown(request).GetValueOrDefault(FoundPart.Parameter);

    /// <summary>Which part of the stream the page shows.</summary>
    public static StreamStretch Stretch(HttpRequest request) => StreamStretch.Read(Shown(request));

    private static Dictionary<string, StringValues> Shown(HttpRequest request) => QueryHelpers.ParseQuery(
        ShownWith(request) is { Length: > 0 } here ? QueryOf(here)
        : HttpMethods.IsGet(request.Method) ? request.QueryString.Value
        : SentFrom(request)?.Query);

    /// <summary>Id of the part of the bench that a form stood in, for a page that comes back whole; null where none is
    /// nearer than its top.</summary>
    public static string? Near(HttpContext context)
    {
        var route = context.Request.RouteValues;
        return context.GetEndpoint()?.Metadata.GetMetadata<IEndpointNameMetadata>()?.EndpointName switch
        {
            "record-reading" or "record-bracket" => "result",
            "record-observation" => "observe-title",
            "record-action" or "disturb" => "disturbs-title",
            "keep-note" or "open-loose-end" => "write",
            "tie-loose-end" or "untie-loose-ends" or "waive-loose-end" => "ends",
            "keep-photos" => "captures-title",
            "confirm" or "drop" or "reopen" or "change" => $"finding-{route["recording"]}-{route["index"]}",
            _ when route.TryGetValue("recording", out var recording) => $"item-{recording}",
            _ when route.TryGetValue("entry", out var entry) => $"item-{entry}",
            _ => null,
        };
    }

    /// <summary>Id of the first finding of a note that was written just now; null where none was or it gave none.</summary>
    public static string? FirstFinding(IReadOnlyList<EntryBody> recorded) =>
        recorded is [NoteWritten { Amends: null }, FindingsProposed { Findings.Count: > 0, Recording: var note }]
            ? string.Create(CultureInfo.InvariantCulture, $"finding-{note}-0")
            : null;

    /// <summary>The address of a check and place of an inspection, with what is near, and with as much of the stream as
    /// reaches back to it.</summary>
    public static string Address(BenchScene scene, BenchFocus focus, string? near)
    {
        var page = focus.Check is { } check && scene.Sheet.Find(check) is not null
            ? Links.Check(scene.Vehicle.Id, scene.Inspection.Number, check, focus.Cylinder)
            : Links.Inspection(scene.Vehicle.Id, scene.Inspection.Number);
        return near is null ? page : $"{StreamStretch.Reaching(scene.Inspection, page, near)}#{near}";
    }

    // The form was read already, to find its stamp.
    private static string? ShownWith(HttpRequest request) =>
        HttpMethods.IsPost(request.Method) && request.HasFormContentType ? request.Form[Here].ToString() : request.Query[Here].ToString();

    private static string QueryOf(string address) =>
        address.Split('#')[0] is var page && page.IndexOf('?', StringComparison.Ordinal) is >= 0 and var at ? page[at..] : "";

    private static Uri? SentFrom(HttpRequest request) =>
        Uri.TryCreate(request.Headers["HX-Current-URL"], UriKind.Absolute, out var current) ? current
        : Uri.TryCreate(request.Headers.Referer, UriKind.Absolute, out var referer) ? referer
        : null;
}
