using InspectLog.App.Access;
using InspectLog.App.Forms;
using InspectLog.App.People;
using InspectLog.App.Ui;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal;

namespace InspectLog.App.OwnWords;

/// <summary>The workshop's own words for what the check sheets know.</summary>
public static class WordEndpoints
{
    public static void MapWords(this IEndpointRouteBuilder app)
    {
        var words = app.For(Policies.LookAtAll, Policies.Keep);
        words.MapGet(Links.Words, Ask).WithName("words");
        words.MapPost(Links.Words, Add).WithName("add-word");
        words.MapPost(Links.Words + "/{number:long}/remove", Remove).WithName("remove-word");
    }

    /// <summary>The words, and the form for one more: first the phrase and its check, then what it means there.</summary>
    private static IResult Ask(Garage garage, string? phrase, string? check)
    {
        var typed = phrase?.Trim() ?? "";
        if (check is null)
        {
            return Show(garage, typed, null, null);
        }

        return WordForm.Find(check) is { } chosen
            ? Show(garage, typed, chosen, null)
            : Show(garage, typed, null, new("word", Fields(("phrase", typed)), Fields(("check", WordForm.NoCheck))));
    }

    private static Dictionary<string, string> Fields((string Name, string Text) field) => new() { [field.Name] = field.Text };

    private static async Task<IResult> Add(HttpContext context, Garage garage)
    {
        var form = await PostedForm.ReadAsync(context.Request);
        if (WordForm.Read(form, garage.Workshop) is not { } word)
        {
            return Show(garage, form.Text("phrase"), WordForm.Find(form.Text("check")), form.Refused("word"));
        }

        garage.AppendToWorkshop(PersonAtWork.Of(context), word);
        return Results.Redirect(Links.Words);
    }

    private static IResult Remove(HttpContext context, Garage garage, long number)
    {
        if (!garage.Workshop.Words.Exists(word => word.Number == number))
        {
            return Results.NotFound();
        }

        garage.AppendToWorkshop(PersonAtWork.Of(context), new OwnWordRemoved(number));
        return Results.Redirect(Links.Words);
    }

    private static IResult Show(
        Garage garage, string phrase, (CheckSheet, Check)? chosen, RefusedForm? refused) => Page.Of<WordsPage, WordsView>(
        new WordsView(garage.Workshop.Words, phrase, chosen, refused, garage.Problems),
        refused is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}
