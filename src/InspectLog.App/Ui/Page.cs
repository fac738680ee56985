using Microsoft.AspNetCore.Http.HttpResults;

namespace InspectLog.App.Ui;

/// <summary>Builds responses from components. The one place where a model meets its component's parameter.</summary>
public static class Page
{
    /// <summary>A page or fragment with its model.</summary>
    public static RazorComponentResult<TComponent> Of<TComponent, TModel>(TModel model, int status = StatusCodes.Status200OK)
        where TComponent : ModelComponent<TModel> =>
        new(new Dictionary<string, object?> { [nameof(ModelComponent<TModel>.Model)] = model })
        {
            StatusCode = status,
            PreventStreamingRendering = true,
        };
}
