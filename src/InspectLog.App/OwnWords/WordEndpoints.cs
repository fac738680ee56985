using InspectLog.App.Forms;
using InspectLog.App.Ui;
using InspectLog.App.Vehicles;
using InspectLog.Journal;
using InspectLog.Journal.Entries;

namespace InspectLog.App.OwnWords;

/// <summary>The workshop's own words for what the check sheets know.</summary>
public static class WordEndpoints
{
    public static void MapWords(this IEndpointRouteBuilder app)
    {
        app.MapGet(Links.Words, (Garage garage) => Show(garage, null)).WithName("words");
        app.MapPost(Links.Words, Add).WithName("add-word");
        app.MapPost(Links.Words + "/{number:long}/remove", Remove).WithName("remove-word");
    }

    private static async Task<IResult> Add(HttpContext context, Garage garage)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        if (WordForm.Read(form, garage.Workshop) is not { } word)
        {
            return Show(garage, form.Refused("word"));
        }

        garage.AppendToWorkshop(Technician.Of(context), word);
        return Results.Redirect(Links.Words);
    }

    private static IResult Remove(HttpContext context, Garage garage, long number)
    {
        if (!garage.Workshop.Words.Exists(word => word.Number == number))
        {
            return Results.NotFound();
        }

        garage.AppendToWorkshop(Technician.Of(context), new OwnWordRemoved(number));
        return Results.Redirect(Links.Words);
    }

    private static IResult Show(Garage garage, RefusedForm? refused) => Page.Of<WordsPage, WordsView>(
        new WordsView(garage.Workshop.Words, refused, garage.Problems),
        refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}
