namespace InspectLog.App.Hosting;

/// <summary>Takes the app's endpoints and makes each once. A group of the framework makes its endpoints anew for everybody who
/// asks for them, and routing, authorization and the rate limits all ask: that is most of the time a start takes.</summary>
internal sealed class MadeOnce(IEndpointRouteBuilder app) : IEndpointRouteBuilder
{
    public IServiceProvider ServiceProvider => app.ServiceProvider;

    public ICollection<EndpointDataSource> DataSources { get; } = [];

    public IApplicationBuilder CreateApplicationBuilder() => app.CreateApplicationBuilder();

    /// <summary>Makes the endpoints mapped so far, and gives them to the app.</summary>
    public void Make() => app.DataSources.Add(new DefaultEndpointDataSource([.. DataSources.SelectMany(source => source.Endpoints)]));
}
