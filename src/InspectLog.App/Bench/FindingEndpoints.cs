using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Ui;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using System.Globalization;

namespace InspectLog.App.Bench;

/// <summary>Settles what was understood: confirm, change, drop, and undo the last. What is settled after the inspection was closed is added
/// later: it changes no check.</summary>
public static class FindingEndpoints
{
    public static void MapFindings(this IEndpointRouteBuilder app)
    {
        var findings = app.MapInspection(Policies.Look, Policies.Record, "/findings/{recording:long}");
        findings.MapPost("/confirm-all", ConfirmAll).WithName("confirm-all");
        findings.MapPost("/{index:int}/confirm", Confirm).WithName("confirm");
        findings.MapPost("/{index:int}/drop", Drop).WithName("drop");
        findings.MapPost("/{index:int}/reopen", Reopen).WithName("reopen");
        findings.MapGet("/{index:int}/change", ChangeForm).WithName("change-form");
        findings.MapPost("/{index:int}/change", Change).WithName("change");
    }

    /// <summary>Confirms a card. Where it does not say its place and the check has several, the form does.</summary>
    private static async Task<IResult> Confirm(HttpContext context, BenchDesk desk, long recording, int index)
    {
        var scene = desk.Scene;
        if (Card(desk, scene, recording, index) is not { } card)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var places = card.NeedsPlace ? PlaceFields.Ticked(form, scene.Sheet, card.Check!) : null;
        var meant = form.Text("meant");
        if (card is { State: ProposalState.Open, NotShown: { } notShown } && card.ReadOff!.Answered(meant) is not ReadOff.Taken)
        {
            form.Refuse("", notShown);
        }

        return form.IsValid
            ? desk.Show(context, desk.Record(scene, now =>
                Confirming.Bodies(now, desk.Garage.Workshop, Card(desk, now, recording, index)!, places, meant), afterClosing: true))
            : desk.Show(context, scene, form.Refused(string.Create(CultureInfo.InvariantCulture, $"confirm-{recording}-{card.First.Reference.Index}")));
    }

    /// <summary>Confirms every card of a note that is still open, except the doubtful ones.</summary>
    private static IResult ConfirmAll(HttpContext context, BenchDesk desk, string vehicle, long number, long recording)
    {
        var scene = desk.Scene;
        if (scene.Inspection.FindNote(recording) is null)
        {
            return Results.NotFound();
        }

        return desk.Show(context, desk.Record(scene, now => Confirming.Bodies(
            now, desk.Garage.Workshop, Cards(desk, now, recording).Where(Confirming.IsSure)), afterClosing: true));
    }

    private static IResult Drop(
        HttpContext context, BenchDesk desk, string vehicle, long number, long recording, int index)
    {
        var scene = desk.Scene;
        if (Card(desk, scene, recording, index) is null)
        {
            return Results.NotFound();
        }

        return desk.Show(context, desk.Record(scene, now =>
            [.. Card(desk, now, recording, index)!.Proposals
                .Where(proposal => proposal.State == ProposalState.Open)
                .Select(proposal => new FindingDropped(proposal.Reference))], afterClosing: true));
    }

    /// <summary>What was dropped by mistake waits to be settled again.</summary>
    private static IResult Reopen(HttpContext context, BenchDesk desk, long recording, int index) =>
        Card(desk, desk.Scene, recording, index) is null
            ? Results.NotFound()
            : desk.Show(context, desk.Record(
                desk.Scene, now => Withdrawing.Undrop(now, Card(desk, now, recording, index)?.Proposals ?? []), afterClosing: true));

    private static IResult ChangeForm(
        HttpContext context, BenchDesk desk, string vehicle, long number, long recording, int index)
    {
        var scene = desk.Scene;
        if (Card(desk, scene, recording, index) is not { } card)
        {
            return Results.NotFound();
        }

        return Page.Of<ChangePage, ChangeView>(View(context, desk, recording, card, null));
    }

    private static async Task<IResult> Change(
        HttpContext context, BenchDesk desk, string vehicle, long number, long recording, int index)
    {
        var scene = desk.Scene;
        if (Card(desk, scene, recording, index) is not { } card)
        {
            return Results.NotFound();
        }

        var form = await PostedForm.ReadAsync(context.Request);
        var changed = ChangedFinding.Read(form, scene, desk.Garage.Workshop, card, out var asked);
        var word = RememberedWord.Read(form, scene, desk.Garage.Workshop, card);
        if (asked is not null)
        {
            form.Refuse("", asked.Question);
        }

        if (changed is null || !form.IsValid)
        {
            return Page.Of<ChangePage, ChangeView>(
                View(context, desk, recording, card, form.Refused("change")) with { Asked = asked }, StatusCodes.Status422UnprocessableEntity);
        }

        scene = desk.Record(
            scene,
            now => Card(desk, now, recording, index) is { State: ProposalState.Open }
                ? LooseEndRules.WithWhatFollows(now, [changed])
                : [],
            afterClosing: true);
        if (word is not null)
        {
            desk.Garage.AppendToWorkshop(desk.Person, word);
        }

        return desk.Return(context, scene, PostedPlace.Focus(context.Request), Next(desk, scene, recording, index));
    }

    private static ChangeView View(
        HttpContext context, BenchDesk desk, long recording, ProposalCard card, RefusedForm? form) => new(
        desk.Scene.Vehicle,
        desk.Scene.Inspection,
        desk.Scene.Sheet,
        desk.Scene.Inspection.FindNote(recording)!,
        card,
        RememberedWord.Unknown(desk.Scene, desk.Garage.Workshop, recording, card),
        form,
        desk.Garage.Problems)
    {
        Back = PostedPlace.Address(desk.Scene, PostedPlace.Focus(context.Request), Anchor(recording, card.First.Reference.Index)),
    };

    /// <summary>Where the bench is opened after a change: at what waits next in the same note, or else in any, or else at
    /// what was changed.</summary>
    private static string Next(BenchDesk desk, BenchScene scene, long recording, int index)
    {
        var open = scene.Inspection.WordedNotes.Select(note => note.Sequence)
            .Where(note => note != recording)
            .Prepend(recording)
            .SelectMany(note => Cards(desk, scene, note).Select(card => (Note: note, Card: card)))
            .FirstOrDefault(one => one.Card.State == ProposalState.Open);
        return open.Card is { } next ? Anchor(open.Note, next.First.Reference.Index) : Anchor(recording, index);
    }

    private static string Anchor(long recording, int index) =>
        string.Create(CultureInfo.InvariantCulture, $"finding-{recording}-{index}");

    private static IReadOnlyList<ProposalCard> Cards(BenchDesk desk, BenchScene scene, long recording) =>
        scene.Inspection.FindNote(recording) is { } note
            ? ProposalCards.Of(note, scene, desk.Garage.Workshop)
            : [];

    private static ProposalCard? Card(BenchDesk desk, BenchScene scene, long recording, int index) =>
        Cards(desk, scene, recording).FirstOrDefault(card => card.Proposals.Any(p => p.Reference.Index == index));
}
