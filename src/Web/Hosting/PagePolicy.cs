namespace Nookwright.Web.Hosting;

/// <summary>Tells the browser that nothing on a page comes from anywhere but this program.</summary>
public static class PagePolicy
{
    private const string Content =
        "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>Adds the policy to every answer.</summary>
    public static Task Apply(HttpContext context, RequestDelegate next)
    {
        context.Response.Headers.ContentSecurityPolicy = Content;
        context.Response.Headers.XContentTypeOptions = "nosniff";
        context.Response.Headers["Referrer-Policy"] = "no-referrer";
        return next(context);
    }
}
