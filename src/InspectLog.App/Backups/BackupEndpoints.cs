using System.Globalization;
using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Network;
using InspectLog.App.Ui;
using InspectLog.Journal;
using InspectLog.Journal.Backups;

namespace InspectLog.App.Backups;

/// <summary>Backups, for the owner.</summary>
public static class BackupEndpoints
{
    private const int MostDays = 365;

    public static void MapBackups(this IEndpointRouteBuilder app)
    {
        var backup = app.MapGroup(Links.Backup).WhoMay(Policies.Run, Policies.Run);
        backup.MapGet("/", (BackupDesk desk, Garage garage) => Show(desk, garage, null)).WithName("backup");
        backup.MapPost("/", Keep).WithName("keep-backup-settings");
        backup.MapPost("/now", Now).WithName("back-up-now");
    }

    private static async Task<IResult> Keep(HttpContext context, BackupDesk desk, Garage garage)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var folder = form.Text("folder");
        var isNightly = form.Text("nightly").Length > 0;
        if (Doors.Of(context) != Door.Workshop)
        {
            // A folder is one of the workshop's computer, and only who sits there knows it.
            form.Refuse("", "Where backups go is chosen at the workshop's own computer alone. Open this page there.");
        }
        else if (folder.Length == 0 && isNightly)
        {
            form.Refuse("folder", "Name the folder that the backups go to.");
        }
        else if (folder.Length > 0 && !Path.IsPathFullyQualified(folder))
        {
            form.Refuse("folder", "Name the folder in full, from the root of its disk.");
        }

        if (!int.TryParse(form.Text("days"), NumberStyles.None, CultureInfo.InvariantCulture, out var days) || days is < 1 or > MostDays)
        {
            form.Refuse("days", $"Give a number of days from 1 to {MostDays}.");
        }

        if (!form.IsValid)
        {
            return Show(desk, garage, form.Refused("backup"));
        }

        try
        {
            desk.Record.Keep(new(folder.Length == 0 ? null : folder, isNightly, days));
            return Results.Redirect(Links.Backup);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            form.Refuse("", $"The settings could not be kept: {problem.Message}");
            return Show(desk, garage, form.Refused("backup"));
        }
    }

    private static IResult Now(BackupDesk desk, Garage garage)
    {
        if (desk.Record.Settings.Folder is { } folder)
        {
            desk.Begin(folder);
            return Results.Redirect(Links.Backup);
        }

        return Show(desk, garage, new("backup", new Dictionary<string, string>(), new Dictionary<string, string> { ["folder"] = "Name the folder that the backups go to, and keep it." }));
    }

    private static IResult Show(BackupDesk desk, Garage garage, RefusedForm? refused) => Page.Of<BackupPage, BackupView>(
        new(desk.Record.Settings, desk.Record.Last, desk.Progress, refused, garage.Problems),
        refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}

/// <summary>The page of the backups.</summary>
/// <param name="Settings">What is wanted of them.</param>
/// <param name="Last">How the last one went.</param>
/// <param name="Progress">How far the one is that is being made; null where none is.</param>
/// <param name="Form">The form when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record BackupView(
    BackupSettings Settings, LastBackup Last, BackupProgress? Progress, RefusedForm? Form, IReadOnlyList<GarageProblem> Problems);
