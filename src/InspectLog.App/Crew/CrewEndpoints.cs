using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.People;
using InspectLog.App.Ui;
using InspectLog.Journal;

namespace InspectLog.App.Crew;

/// <summary>What a browser is told once and remembers: who works in it, and whether it stands in bright sunlight.</summary>
public static class CrewEndpoints
{
    private const int LongestAddress = 500;

    public static void MapCrew(this IEndpointRouteBuilder app)
    {
        var person = app.For(Policies.Visit, Policies.Visit);
        person.MapGet(Links.Person, Show).WithName("person");
        person.MapPost(Links.Person, Choose).WithName("choose-person");
        person.MapGet(Links.Sunlight, () => Results.Redirect(Links.Garage)).WithName("sunlight");
        person.MapPost(Links.Sunlight, (Delegate)ShowInSunlight).WithName("show-in-sunlight");
    }

    /// <summary>How this browser shows pages; the way back is the page it was pressed on.</summary>
    private static async Task<IResult> ShowInSunlight(HttpContext context)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        Sunlight.Remember(context, form.Text("on") == "true");
        return Results.Redirect(OwnPage(form.Text("page")));
    }

    private static IResult Show(HttpContext context, Garage garage) => Page.Of<PersonPage, PersonView>(
        View(context, garage, Uri.TryCreate(context.Request.Headers.Referer, UriKind.Absolute, out var from) ? from.PathAndQuery : "", null));

    /// <summary>A form brings the name twice where one of the known names was pressed: the typed field, which is empty
    /// or holds something half typed, and the button.</summary>
    private static async Task<IResult> Choose(HttpContext context, Garage garage)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var name = form.Text("known") is { Length: > 0 } known ? known : form.Text("person");
        if (PersonName.Problem(name) is { } problem)
        {
            form.Refuse("person", problem);
        }

        if (!form.IsValid)
        {
            return Page.Of<PersonPage, PersonView>(
                View(context, garage, form.Text("back"), form.Refused("person")), StatusCodes.Status422UnprocessableEntity);
        }

        PersonAtWork.Remember(context, name);
        return Results.Redirect(OwnPage(form.Text("back")));
    }

    private static PersonView View(HttpContext context, Garage garage, string back, RefusedForm? form) =>
        new(PersonAtWork.Chosen(context), KnownPeople.Of(garage), OwnPage(back), form, garage.Problems);

    /// <summary>The address of a page of this program: any other, and the page itself, give the garage.</summary>
    private static string OwnPage(string address) =>
        address.Length <= LongestAddress
        && address.StartsWith('/')
        && !address.StartsWith("//", StringComparison.Ordinal)
        && !address.StartsWith(Links.Person, StringComparison.Ordinal)
        && address.All(sign => sign is > ' ' and < '\u007f' and not '\\')
            ? address
            : Links.Garage;
}
