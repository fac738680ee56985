using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.App.Listening;
using InspectLog.App.Ui;
using InspectLog.Dictation.Hearing;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using Microsoft.AspNetCore.WebUtilities;

namespace InspectLog.App.Bench;

/// <summary>What every endpoint of the bench needs: finding the inspection, recording in it, and showing it.</summary>
public sealed class BenchDesk(Garage garage, ISpeechToText speech, BenchEvents events)
{
    public Garage Garage => garage;

    /// <summary>The inspection with its vehicle and sheet, or null.</summary>
    public BenchScene? Find(string vehicleId, long number) => BenchScene.Find(garage, vehicleId, number);

    /// <summary>Records entries in an open inspection; they are on disk when this returns. Pages that show the
    /// inspection are told.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="decide">Gives the entries from the inspection as it stands while nothing else can be appended.</param>
    /// <exception cref="InspectionClosedException">It was closed in the meantime.</exception>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present.</exception>
    public BenchScene Record(BenchScene scene, Func<BenchScene, IReadOnlyList<EntryBody>> decide)
    {
        var number = scene.Inspection.Number;
        var vehicle = garage.Append(scene.Vehicle.Id, scene.Inspection.How.Technician, state =>
        {
            var now = BenchScene.Of(state, number)!;
            return now.Inspection.IsClosed ? throw new InspectionClosedException() : decide(now);
        });
        events.Publish(scene.Vehicle.Id, number, new BenchEvent.Changed());
        return BenchScene.Of(vehicle, number)!;
    }

    /// <summary>Records one entry and what follows from it.</summary>
    public BenchScene Record(BenchScene scene, EntryBody record) =>
        Record(scene, now => [record, .. LooseEndRules.Following(now.Inspection, now.Sheet, record)]);

    /// <summary>Answers with the bench: the fragment where htmx asked, the whole page on a plain GET, a redirect to it
    /// after a plain form, and status 422 where a form was refused.</summary>
    /// <param name="context">The request.</param>
    /// <param name="scene">The inspection.</param>
    /// <param name="form">The form that was refused; null when none was.</param>
    /// <param name="question">A typed number that could mean two things; null when there is none.</param>
    /// <param name="at">The check and place to show, where the request itself says; null goes by the address.</param>
    public IResult Show(
        HttpContext context,
        BenchScene scene,
        RefusedForm? form = null,
        NumberQuestion? question = null,
        BenchFocus? at = null)
    {
        var focus = at ?? FocusOf(context);
        var refused = form is not null || question is not null;
        var isFragment = context.Request.Headers["HX-Request"] == "true";
        context.Response.Headers.Vary = "HX-Request";
        if (!isFragment && !refused && HttpMethods.IsPost(context.Request.Method))
        {
            return Results.Redirect(focus.Check is { } check
                ? Links.Check(scene.Vehicle.Id, scene.Inspection.Number, check, focus.Cylinder)
                : Links.Inspection(scene.Vehicle.Id, scene.Inspection.Number));
        }

        var view = BenchViewBuilder.Build(
            scene, focus, garage.Workshop, speech.Readiness, garage.Problems, form, question);
        var status = refused ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK;
        return isFragment ? Page.Of<BenchFragment, BenchView>(view, status) : Page.Of<BenchPage, BenchView>(view, status);
    }

    /// <summary>Which check and place the page shows: by its own address on a GET; after a form by the address of the
    /// page it was sent from, so that recording something elsewhere does not turn the page.</summary>
    private static BenchFocus FocusOf(HttpContext context)
    {
        var query = HttpMethods.IsGet(context.Request.Method)
            ? context.Request.QueryString.Value
            : SentFrom(context.Request)?.Query;
        var values = QueryHelpers.ParseQuery(query);
        var cylinder = int.TryParse(
            values.GetValueOrDefault("place"), NumberStyles.None, CultureInfo.InvariantCulture, out var place)
            ? place
            : (int?)null;
        return new BenchFocus(values.GetValueOrDefault("check"), cylinder);
    }

    private static Uri? SentFrom(HttpRequest request) =>
        Uri.TryCreate(request.Headers["HX-Current-URL"], UriKind.Absolute, out var current) ? current
        : Uri.TryCreate(request.Headers.Referer, UriKind.Absolute, out var referer) ? referer
        : null;
}
