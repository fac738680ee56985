using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.Network;
using InspectLog.App.People;
using InspectLog.App.Ui;
using InspectLog.Journal;
using InspectLog.Journal.Erasing;

namespace InspectLog.App.Erasing;

/// <summary>Erasing what is known of one person, for the owner at the workshop's own computer: first a list, then the name typed
/// once more. The name comes in forms only, so that no address and no history keeps it.</summary>
public static class ErasureEndpoints
{
    private const string Form = "erase";

    public static void MapErasing(this IEndpointRouteBuilder app)
    {
        var erase = app.MapGroup(Links.Erase).WhoMay(Policies.Run, Policies.Run);
        erase.MapGet("/", (Garage garage) => Show(garage, new())).WithName("erase");
        erase.MapPost("/list", List).WithName("list-what-goes");
        erase.MapPost("/", Erase).WithName("erase-person");
    }

    private static async Task<IResult> List(HttpContext context, Garage garage)
    {
        var form = await ReadAsync(context);
        var (person, asWorker) = Asked(form);
        var plan = form.IsValid ? Planned(garage, form, person, asWorker) : null;
        return Show(garage, new() { Plan = plan, AsWorker = asWorker, Form = form.IsValid ? null : form.Refused(Form) });
    }

    private static async Task<IResult> Erase(HttpContext context, Garage garage)
    {
        var form = await ReadAsync(context);
        var (person, asWorker) = Asked(form);
        var (askedBy, reason) = (form.Required("asked-by", "Say who asked, without the name of the person."), form.Required("reason", "Say why."));
        if (!string.Equals(form.Text("typed"), person, StringComparison.OrdinalIgnoreCase))
        {
            form.Refuse("typed", "Type the name as it stands above, so that nobody is erased by mistake.");
        }

        if (form.IsValid)
        {
            try
            {
                var done = garage.Erase(PersonAtWork.Of(context), new(person, asWorker, askedBy, reason), form.Text("mark"));
                return Show(garage, new() { Done = done });
            }
            catch (ErasureRefusedException refused)
            {
                form.Refuse("", refused.Message);
            }
            catch (IOException brokenOff)
            {
                form.Refuse("", brokenOff.Message);
            }
        }

        return Show(garage, new() { Plan = Again(garage, person, asWorker), AsWorker = asWorker, Form = form.Refused(Form) });
    }

    private static async Task<PostedForm> ReadAsync(HttpContext context)
    {
        context.Response.Headers.CacheControl = "no-store";
        var form = await PostedForm.ReadAsync(context.Request);
        if (Doors.Of(context) != Door.Workshop)
        {
            form.Refuse("", "A person is erased at the workshop's own computer alone. Open this page there.");
        }

        return form;
    }

    private static (string Person, bool AsWorker) Asked(PostedForm form) =>
        (form.Required("person", "Type the person's name as it stands in the journals."), form.Text("worker").Length > 0);

    private static ErasurePlan? Planned(Garage garage, PostedForm form, string person, bool asWorker)
    {
        try
        {
            return garage.PlanErasure(person, asWorker);
        }
        catch (ErasureRefusedException refused)
        {
            form.Refuse("person", refused.Message);
            return null;
        }
    }

    /// <summary>The list as it is now, beside what was wrong with the form; null where there is none.</summary>
    private static ErasurePlan? Again(Garage garage, string person, bool asWorker)
    {
        try
        {
            return garage.PlanErasure(person, asWorker);
        }
        catch (ErasureRefusedException)
        {
            return null; // what is wrong is told by the form
        }
    }

    private static IResult Show(Garage garage, ErasureView view) => Page.Of<ErasurePage, ErasureView>(
        view with { Problems = garage.Problems },
        view.Form is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}

/// <summary>The page on which a person is erased.</summary>
public sealed record ErasureView
{
    /// <summary>What would go; null where nobody was named yet.</summary>
    public ErasurePlan? Plan { get; init; }

    /// <summary>Whether the name goes as well where it says who worked.</summary>
    public bool AsWorker { get; init; }

    /// <summary>What was erased; null where nothing was.</summary>
    public ErasurePlan? Done { get; init; }

    /// <summary>The form when it was refused; null otherwise.</summary>
    public RefusedForm? Form { get; init; }

    /// <summary>Trouble with the garage.</summary>
    public IReadOnlyList<GarageProblem> Problems { get; init; } = [];
}
