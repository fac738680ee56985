using InspectLog.App.Forms;
using InspectLog.App.Ui;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>Settles what was understood: confirm, change, drop.</summary>
public static class FindingEndpoints
{
    public static void MapFindings(this IEndpointRouteBuilder app)
    {
        var findings = app.MapGroup(BenchEndpoints.Base + "/findings/{recording:long}");
        findings.MapPost("/confirm-all", ConfirmAll).WithName("confirm-all");
        findings.MapPost("/{index:int}/confirm", Confirm).WithName("confirm");
        findings.MapPost("/{index:int}/drop", Drop).WithName("drop");
        findings.MapGet("/{index:int}/change", ChangeForm).WithName("change-form");
        findings.MapPost("/{index:int}/change", Change).WithName("change");
    }

    private static IResult Confirm(
        HttpContext context, BenchDesk desk, string vehicle, long number, long recording, int index)
    {
        if (desk.Find(vehicle, number) is not { } scene || Card(desk, scene, recording, index) is null)
        {
            return Results.NotFound();
        }

        return desk.Show(context, desk.Record(scene, now => Confirmed(desk, now, Card(desk, now, recording, index)!)));
    }

    /// <summary>Confirms every card of a note that is still open, except the doubtful ones.</summary>
    private static IResult ConfirmAll(HttpContext context, BenchDesk desk, string vehicle, long number, long recording)
    {
        if (desk.Find(vehicle, number) is not { } scene || scene.Inspection.FindVoiceNote(recording) is null)
        {
            return Results.NotFound();
        }

        return desk.Show(context, desk.Record(scene, now => Confirming.Bodies(
            now.Inspection, now.Sheet, desk.Garage.Workshop, Cards(desk, now, recording).Where(Confirming.IsSure))));
    }

    private static IResult Drop(
        HttpContext context, BenchDesk desk, string vehicle, long number, long recording, int index)
    {
        if (desk.Find(vehicle, number) is not { } scene || Card(desk, scene, recording, index) is null)
        {
            return Results.NotFound();
        }

        return desk.Show(context, desk.Record(scene, now =>
            [.. Card(desk, now, recording, index)!.Proposals
                .Where(proposal => proposal.State == ProposalState.Open)
                .Select(proposal => new FindingDropped(proposal.Reference))]));
    }

    private static IResult ChangeForm(
        BenchDesk desk, string vehicle, long number, long recording, int index)
    {
        if (desk.Find(vehicle, number) is not { } scene || Card(desk, scene, recording, index) is not { } card)
        {
            return Results.NotFound();
        }

        return Page.Of<ChangePage, ChangeView>(View(desk, scene, recording, card, null));
    }

    private static async Task<IResult> Change(
        HttpContext context, BenchDesk desk, string vehicle, long number, long recording, int index)
    {
        if (desk.Find(vehicle, number) is not { } scene || Card(desk, scene, recording, index) is not { } card)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var changed = ChangedFinding.Read(form, scene, desk.Garage.Workshop, card);
        var word = RememberedWord.Read(form, scene, desk.Garage.Workshop, card);
        if (changed is null || !form.IsValid)
        {
            return Page.Of<ChangePage, ChangeView>(
                View(desk, scene, recording, card, form.Refused("change")), StatusCodes.Status422UnprocessableEntity);
        }

        desk.Record(scene, now => Card(desk, now, recording, index) is { State: ProposalState.Open }
            ? [changed, .. LooseEndRules.Following(now.Inspection, now.Sheet, changed)]
            : []);
        if (word is not null)
        {
            desk.Garage.AppendToWorkshop(scene.Inspection.How.Technician, word);
        }

        return Results.Redirect(Links.Inspection(vehicle, number));
    }

    private static ChangeView View(
        BenchDesk desk, BenchScene scene, long recording, ProposalCard card, RefusedForm? form) => new(
        scene.Vehicle,
        scene.Inspection,
        scene.Sheet,
        scene.Inspection.FindVoiceNote(recording)!,
        card,
        RememberedWord.Unknown(scene, desk.Garage.Workshop, recording, card),
        form,
        desk.Garage.Problems);

    private static IReadOnlyList<EntryBody> Confirmed(BenchDesk desk, BenchScene scene, ProposalCard card) =>
        Confirming.Bodies(scene.Inspection, scene.Sheet, desk.Garage.Workshop, card);

    private static IReadOnlyList<ProposalCard> Cards(BenchDesk desk, BenchScene scene, long recording) =>
        scene.Inspection.FindVoiceNote(recording) is { } note
            ? ProposalCards.Of(note, scene.Sheet, desk.Garage.Workshop)
            : [];

    private static ProposalCard? Card(BenchDesk desk, BenchScene scene, long recording, int index) =>
        Cards(desk, scene, recording).FirstOrDefault(card => card.Proposals.Any(p => p.Reference.Index == index));
}
