using InspectLog.App.Access;
using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.App.Network;
using InspectLog.App.People;
using InspectLog.App.Ui;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Reports;

/// <summary>Links by which somebody reads one report, and nothing else, until a day.</summary>
public static class LinkEndpoints
{
    /// <summary>How many days a link can hold.</summary>
    public static IReadOnlyList<int> Days { get; } = [1, 7, 30];

    public static void MapReportLinks(this IEndpointRouteBuilder app)
    {
        var links = app.MapInspection(Policies.Keep, Policies.Keep, "/report/links");
        links.MapGet("/", (BenchDesk desk, ReachedAt reached) => Show(desk, reached, null, null)).WithName("report-links");
        links.MapPost("/", Give).WithName("give-report-link");
    }

    /// <summary>The answer shows the link, this once: what opens it is kept nowhere here.</summary>
    private static async Task<IResult> Give(HttpContext context, BenchDesk desk, ReachedAt reached, TimeProvider time, string vehicle, long number)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var person = form.Text("person");
        if (PersonName.Problem(person) is not null)
        {
            form.Refuse("person", "Type who the link is for, so that you know later which one to revoke.");
        }

        if (Days.FirstOrDefault(days => form.Text("days") == $"{days}") is not (> 0 and var chosen))
        {
            form.Refuse("days", "Choose how long the link holds.");
            return Show(desk, reached, form.Refused("link"), null);
        }

        if (reached.Addresses.Phones.Count == 0)
        {
            form.Refuse("", "Nobody could open a link now: InspectLog is not open to the network. Start it with \"serve --lan\" in place of \"serve\".");
        }

        if (!form.IsValid)
        {
            return Show(desk, reached, form.Refused("link"), null);
        }

        var token = Token.Make();
        var until = time.GetUtcNow() + TimeSpan.FromDays(chosen);
        desk.Garage.AppendToWorkshop(
            desk.Person,
            new AccessGiven(person, $"Link to the report of {desk.Scene.Vehicle.Name}", AccessRole.Viewer, token.Sha256)
            {
                Vehicle = vehicle,
                Inspection = number,
                Until = until.AddTicks(-(until.Ticks % TimeSpan.TicksPerSecond)),
            });
        return Show(desk, reached, null, new(person, new Uri(reached.Addresses.Phones[0], $"{Links.Pair}#{token.Value}"), chosen));
    }

    private static IResult Show(BenchDesk desk, ReachedAt reached, RefusedForm? refused, GivenLink? given) => Page.Of<LinkPage, LinkView>(
        new(desk.Scene.Vehicle.Id, desk.Scene.Vehicle.Name, desk.Scene.Inspection.Number, reached.Addresses.Phones.Count > 0, given, refused, desk.Garage.Problems),
        refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}

/// <summary>A link that was just given.</summary>
/// <param name="Person">Who it is for.</param>
/// <param name="Address">The link.</param>
/// <param name="Days">How long it holds.</param>
public sealed record GivenLink(string Person, Uri Address, int Days);

/// <summary>The page that gives links to a report.</summary>
/// <param name="Vehicle">Id of the vehicle.</param>
/// <param name="Name">Its name.</param>
/// <param name="Inspection">Number of the inspection.</param>
/// <param name="IsOpenToNetwork">Whether anybody could open a link.</param>
/// <param name="Given">The link that was just given; null where none was.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record LinkView(
    string Vehicle, string Name, long Inspection, bool IsOpenToNetwork, GivenLink? Given, RefusedForm? Form, IReadOnlyList<Journal.GarageProblem> Problems);
