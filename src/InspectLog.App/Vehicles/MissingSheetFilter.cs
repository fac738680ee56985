using InspectLog.App.Bench;
using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Journal;
using System.Globalization;

namespace InspectLog.App.Vehicles;

/// <summary>Stands before every address of an inspection: where its check sheet is missing, its page and its report say
/// so and show what was recorded, and nothing more is recorded.</summary>
internal sealed class MissingSheetFilter(Garage garage, SheetLibrary sheets) : IEndpointFilter
{
    public ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        var request = context.HttpContext.Request;
        if (Named(request, "vehicle") is not { } id
            || !long.TryParse(Named(request, "number"), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            || garage.FindVehicle(id) is not { } vehicle
            || vehicle.Inspection(number) is not { } inspection
            || sheets.Of(inspection) is not null)
        {
            return next(context);
        }

        var isPage = HttpMethods.IsGet(request.Method)
            && (request.Path == Links.Inspection(id, number) || request.Path == Links.Report(id, number));
        return isPage
            ? ValueTask.FromResult<object?>(Page.Of<MissingSheetPage, MissingSheetView>(
                MissingSheetView.Of(garage, sheets, vehicle, inspection)))
            : throw new SheetMissingException(sheets.WhatIsMissing(inspection.How));
    }

    private static string? Named(HttpRequest request, string name) => request.RouteValues.GetValueOrDefault(name) as string;
}
