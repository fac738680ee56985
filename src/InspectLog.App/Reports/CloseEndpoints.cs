using InspectLog.App.Access;
using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.App.Seals;
using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Recording;

namespace InspectLog.App.Reports;

/// <summary>Closing an inspection.</summary>
internal static class CloseEndpoints
{
    public static IResult Form(HttpContext context, BenchDesk desk, string vehicle, long number)
    {
        var scene = desk.Scene;
        return scene.Inspection.IsClosed
            ? Results.Redirect(Links.Report(vehicle, number))
            : Page.Of<ClosePage, CloseView>(View(context, desk, scene, null));
    }

    /// <summary>Closes the inspection when every check is done or has a reason, every loose end is tied or waived, and
    /// nothing came in since the page was shown, all of it in one write. Reasons given and ends tied are kept even when
    /// it is not closed, and why it is not is told. Where the record is to be sealed and cannot be without more ado, the
    /// page that seals asks for what is missing.</summary>
    public static async Task<IResult> Close(HttpContext context, BenchDesk desk, WorkshopSeals seals, string vehicle, long number)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        string? news = null;
        var scene = desk.Record(desk.Scene, now =>
        {
            news = Closing.News(form, now);
            return form.IsValid ? Closing.Bodies(form, now) : [];
        });
        if (scene.Inspection.IsClosed)
        {
            var isUnsealed = form.Ticked("seal") && MaySeal(context) && seals.Seal(vehicle, passphrase: "") is not null;
            return Results.Redirect(isUnsealed ? Links.Seal(vehicle, number) : Links.Report(vehicle, number));
        }

        if (news is not null)
        {
            form.Refuse("", news);
        }

        Closing.Refuse(form, scene);
        if (form.IsValid)
        {
            form.Refuse("", "The inspection was not closed. Look at this page again, then close.");
        }

        return Page.Of<ClosePage, CloseView>(
            View(context, desk, scene, form.Refused("close")), StatusCodes.Status422UnprocessableEntity);
    }

    private static bool MaySeal(HttpContext context) => Caller.Of(context)?.May(Policies.Keep) == true;

    private static CloseView View(HttpContext context, BenchDesk desk, BenchScene scene, RefusedForm? form) => new(
        scene.Vehicle,
        scene.Inspection,
        [.. Closing.Missing(scene)],
        [.. scene.Inspection.OpenLooseEnds],
        ProposalGroups.OpenIn(scene.Inspection).Count(),
        scene.Inspection.VoiceNotes.Count(note => note.IsWaiting),
        ShownInspection.Of(scene.Vehicle, scene.Inspection),
        form,
        desk.Garage.Problems)
    {
        MaySeal = MaySeal(context),
        Ends = LooseEndGroups.Of(scene.Inspection.OpenLooseEnds, scene.Sheet),
    };
}
