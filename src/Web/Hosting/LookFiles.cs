using Nookwright.Drawing;
using Nookwright.Lettering;

namespace Nookwright.Web.Hosting;

/// <summary>What page and paper have in common: the look of drawings, and the typeface.</summary>
public static class LookFiles
{
    /// <summary>Serves them.</summary>
    public static void Map(WebApplication server)
    {
        server.MapGet("/drawing.css", () => Results.Text(SvgStyle.Rules, "text/css"));
        MapFace(server, "/type/regular.ttf", Typeface.Regular);
        MapFace(server, "/type/bold.ttf", Typeface.Bold);
    }

    private static void MapFace(WebApplication server, string address, Typeface face) =>
        server.MapGet(
            address,
            (HttpContext context) =>
            {
                context.Response.Headers.CacheControl = "max-age=86400";
                return Results.Bytes(face.File, "font/ttf");
            }
        );
}
