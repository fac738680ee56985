using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.People;
using InspectLog.App.Ui;
using InspectLog.Journal;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Letterhead;

/// <summary>The workshop's name and address, as reports have them at their head.</summary>
public static class LetterheadEndpoints
{
    private const int MostLines = 6;
    private const int LongestLine = 100;

    public static void MapLetterhead(this IEndpointRouteBuilder app)
    {
        var letterhead = app.For(Policies.LookAtAll, Policies.Keep);
        letterhead.MapGet(Links.Letterhead, (Garage garage) => Show(garage, garage.Workshop.Named, null)).WithName("letterhead");
        letterhead.MapPost(Links.Letterhead, Take).WithName("take-letterhead");
    }

    private static async Task<IResult> Take(HttpContext context, Garage garage)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        var named = Read(form);
        if (!form.IsValid)
        {
            return Show(garage, named, form.Refused("letterhead"));
        }

        if (named != (garage.Workshop.Named ?? new("", "")))
        {
            garage.AppendToWorkshop(PersonAtWork.Of(context), named);
        }

        return Results.Redirect(Links.Letterhead);
    }

    private static WorkshopNamed Read(PostedForm form)
    {
        var name = form.Text("name").ReplaceLineEndings(" ").Trim();
        var lines = form.Text("address").ReplaceLineEndings("\n").Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0).ToList();
        if (name.Length > LongestLine)
        {
            form.Refuse("name", $"A name has at most {LongestLine} characters.");
        }

        if (lines.Count > MostLines || lines.Exists(line => line.Length > LongestLine))
        {
            form.Refuse("address", $"An address has at most {MostLines} lines of {LongestLine} characters.");
        }

        return new(name, string.Join('\n', lines));
    }

    private static IResult Show(Garage garage, WorkshopNamed? named, RefusedForm? refused) => Page.Of<LetterheadPage, LetterheadView>(
        new(named ?? new("", ""), refused, garage.Problems),
        refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}

/// <summary>The page of the workshop's name and address.</summary>
/// <param name="Named">What is shown in the fields.</param>
/// <param name="Form">What was refused; null where nothing was.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record LetterheadView(WorkshopNamed Named, RefusedForm? Form, IReadOnlyList<GarageProblem> Problems);
