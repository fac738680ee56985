using System.Globalization;
using InspectLog.Journal.State;
using Microsoft.AspNetCore.WebUtilities;

namespace InspectLog.App.Bench.Photos;

/// <summary>Where a person came from to a photo, and goes back to.</summary>
/// <param name="To">Which page, and which part of it.</param>
/// <param name="Check">The check that was open on the bench.</param>
/// <param name="Cylinder">The place that was in front.</param>
/// <param name="At">The photo that was pressed there.</param>
public sealed record PhotoBack(string To, string? Check, int? Cylinder, long? At)
{
    private const string Report = "report";
    private const string Shots = "check";
    private const string Captured = "captured";

    /// <summary>From the photos of the check that is open.</summary>
    public static PhotoBack FromCheck(OpenCheck open, PhotoCapture photo) => new(Shots, open.Check.Id, open.Place.Cylinder, photo.Sequence);

    /// <summary>From what was captured, with a check open.</summary>
    public static PhotoBack FromCaptured(OpenCheck open, PhotoCapture photo) => new(Captured, open.Check.Id, open.Place.Cylinder, photo.Sequence);

    /// <summary>Where the link to a photo leads from the report, which stands beside it.</summary>
    public static string LinkFromReport(PhotoCapture photo) =>
        string.Create(CultureInfo.InvariantCulture, $"photos/{photo.Sequence}{new PhotoBack(Report, null, null, photo.Sequence).Query}");

    /// <summary>What an address says; the bench where it says nothing that is known.</summary>
    public static PhotoBack Read(string? query)
    {
        var values = QueryHelpers.ParseQuery(query);
        return new(
            values.GetValueOrDefault("to").ToString() is Report or Shots ? values["to"].ToString() : Captured,
            values.TryGetValue("check", out var check) ? check.ToString() : null,
            int.TryParse(values.GetValueOrDefault("place"), NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? place : null,
            long.TryParse(values.GetValueOrDefault("at"), NumberStyles.None, CultureInfo.InvariantCulture, out var at) ? at : null);
    }

    /// <summary>It as part of an address, to be handed on.</summary>
    public string Query =>
        $"?to={To}"
        + (Check is null ? "" : $"&check={Uri.EscapeDataString(Check)}")
        + (Cylinder is null ? "" : $"&place={Links.Place(Cylinder)}")
        + (At is { } at ? string.Create(CultureInfo.InvariantCulture, $"&at={at}") : "");

    /// <summary>Words on the way back.</summary>
    public string Words => To == Report ? "Back to the report" : "Back to the inspection";

    /// <summary>The address of the very place one came from.</summary>
    public string Address(string vehicleId, long number) => To == Report
        ? Links.Report(vehicleId, number) + Mark("photo")
        : (Check is null ? Links.Inspection(vehicleId, number) : Links.Check(vehicleId, number, Check, Cylinder))
            + Mark(To == Shots ? "photo" : "item");

    private string Mark(string kind) => At is { } at ? string.Create(CultureInfo.InvariantCulture, $"#{kind}-{at}") : "";
}
