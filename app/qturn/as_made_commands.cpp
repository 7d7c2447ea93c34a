#include <algorithm>
#include <locale>
#include <sstream>

#include "app/qturn/as_made_reply.h"
#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/drawing.h"
#include "app/qturn/find.h"
#include "app/qturn/out_file.h"
#include "app/qturn/parse.h"
#include "app/qturn/progress.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/rules/head_points.h"
#include "indexer/sheet/as_made_sheet.h"
#include "indexer/sheet/photos_on.h"
#include "indexer/worker/confined.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

struct DayPhotosOptions {
    std::string wedding;
    bool confirm = false;
    bool progress = false;
    Texts give;
    Texts leave;
};

struct AsMadeOptions {
    std::string wedding;
    std::string out;
    Text paper;
    bool replace = false;
};

struct HeadPointsOptions {
    std::string photo;
    Text top;
    Text bottom;
    bool find = false;
};

// "IMG_0012.jpg=Low twisted bun" or "IMG_0012.jpg=Low twisted bun,left".
void give(Library& library, std::vector<DayProposal>& proposals, const std::string& wish) {
    const auto equals = wish.find('=');
    if (equals == std::string::npos) {
        throw WrongUse("--give takes PHOTO=LOOK or PHOTO=LOOK,ANGLE, and '" + wish + "' has no =.");
    }
    const Photo photo = find_photo(library, wish.substr(0, equals));
    const auto proposal = std::ranges::find_if(
        proposals, [&](const DayProposal& each) { return each.photo.id == photo.id; });
    if (proposal == proposals.end()) {
        throw WrongUse(photo.file.name +
                       " is no photo of the wedding's day that waits for a look.");
    }
    const auto comma = wish.rfind(',');
    const bool with_angle = comma != std::string::npos && comma > equals;
    const auto end = with_angle ? comma : wish.size();
    proposal->look = find_look(library, wish.substr(equals + 1, end - equals - 1)).id;
    if (with_angle) proposal->angle = angle_from(wish.substr(comma + 1));
}

void leave(Library& library, std::vector<DayProposal>& proposals, const std::string& name) {
    const Photo photo = find_photo(library, name);
    std::erase_if(proposals, [&](const DayProposal& each) { return each.photo.id == photo.id; });
}

std::vector<DayProposal> proposed(Library& library, Decoder& decoder, WeddingId wedding,
                                  std::span<const Seat> seats, bool tell) {
    ProgressLine line(tell);
    return propose_seen_day_photos(library, decoder, wedding, seats, line.counter());
}

Reply day_photos(Session& session, const DayPhotosOptions& options) {
    Library& library = session.library();
    const Wedding wedding = find_wedding(library, options.wedding);
    const auto decoder = make_confined_decoder();
    const auto seats = planned_seats(library, wedding.id);
    auto proposals = proposed(library, *decoder, wedding.id, seats, options.progress);
    for (const std::string& wish : options.give) give(library, proposals, wish);
    for (const std::string& name : options.leave) leave(library, proposals, name);
    Reply reply = day_photos_reply(library, wedding, proposals);
    if (!options.confirm) return reply;
    const int placed = place_day_photos(library, wedding.id, seats, proposals);
    reply.lines.push_back(count_text(static_cast<std::size_t>(placed), "photo") + " placed.");
    reply.data["placed"] = placed;
    return reply;
}

void write_sheet(Reply& reply, Library& library, Decoder& decoder, WeddingId wedding,
                 const AsMadeOptions& options) {
    const Drawing drawing;
    const auto ruler = make_text_ruler();
    const Paper paper =
        options.paper ? paper_from(*options.paper) : usual_paper(library.settings());
    const Document page = for_own_work(
        library, as_made_sheet(library, decoder, *ruler, wedding, paper), date_of(local_now()));
    const Written written = write_pdf(page, decoder, library.disk(), options.out);
    append(reply.lines, written.problems);
    reply.lines.push_back("Written: " + options.out);
    reply.data["file"] = options.out;
    reply.data["problems"] = written.problems;
}

Reply as_made_command(Session& session, const AsMadeOptions& options) {
    if (!options.out.empty()) refuse_bad_pdf(session, options.out, options.replace);
    Library& library = session.library();
    const WeddingId wedding = find_wedding(library, options.wedding).id;
    const auto decoder = make_confined_decoder();
    Reply reply = as_made_reply(library, *decoder, as_made(library, wedding));
    if (!options.out.empty()) write_sheet(reply, library, *decoder, wedding, options);
    return reply;
}

// "48,12.5": per cent across and down.
PicturePoint point_from(const std::string& text) {
    double across = 0, down = 0;
    char comma = 0;
    std::istringstream stream(text);
    stream.imbue(std::locale::classic());
    const bool read = stream >> across >> comma >> down && comma == ',' && stream.peek() == EOF;
    if (!read || across < 0 || across > 100 || down < 0 || down > 100) {
        throw WrongUse("A point is written as per cent across and down, as in 48,12.5. '" + text +
                       "' is not.");
    }
    return {across / 100, down / 100};
}

void change_head_points(Library& library, const Photo& photo, const HeadPointsOptions& options) {
    library.history().record("changed where the head stands in " + photo.file.name, [&] {
        if (options.find) library.head_points().clear(photo.id);
        if (!options.top) return;
        const HeadPoints points{point_from(*options.top), point_from(*options.bottom)};
        if (const auto reason = reason_against(points, photo.tags.angle)) throw WrongUse(*reason);
        library.head_points().set(photo.id, points);
    });
}

Reply head_points(Session& session, const HeadPointsOptions& options) {
    if (options.top.has_value() != options.bottom.has_value()) {
        throw WrongUse("Name both points of the head, --top and --bottom.");
    }
    if (options.find && options.top) {
        throw WrongUse("--find takes back the points, and --top and --bottom set them. Name one.");
    }
    Library& library = session.library();
    const Photo photo = find_photo(library, options.photo);
    const auto before = library.head_points().of(photo.id);
    if (options.find || options.top) change_head_points(library, photo, options);
    Reply reply = head_points_reply(photo, library.head_points().of(photo.id));
    const bool changed = library.head_points().of(photo.id) != before;
    if (changed) reply.lines.emplace_back("To take it back: qturn undo");
    return reply;
}

}  // namespace

void add_as_made_commands(CommandSet& commands) {
    const auto day = std::make_shared<DayPhotosOptions>();
    auto sorting = commands.add(
        {"day-photos", "Proposes whose each photo of the wedding day is, and from which angle.",
         "qturn day-photos 'Boathouse' --give 'IMG_0412.jpg=Low twisted bun,back' --confirm"},
        [day](Session& session) { return day_photos(session, *day); });
    sorting.argument("WEDDING", day->wedding, "Name or number");
    sorting.option("--give PHOTO=LOOK[,ANGLE]", day->give,
                   "In place of what is proposed; once for each photo");
    sorting.option("--leave PHOTO", day->leave, "Leave it unplaced; once for each photo");
    sorting.flag("--confirm", day->confirm,
                 "Place them at the wedding-day sittings, as after photos of the looks");
    sorting.flag("--progress", day->progress,
                 "Show how far it is, also when standard error is no terminal");
    const auto made = std::make_shared<AsMadeOptions>();
    auto comparing =
        commands.add({"as-made", "Sets the photos of the wedding day beside those of the trial.",
                      "qturn as-made 'Boathouse' --out as-made.pdf"},
                     [made](Session& session) { return as_made_command(session, *made); });
    comparing.argument("WEDDING", made->wedding, "Name or number");
    comparing.option("--out FILE", made->out, "Write 'As agreed, as made' as a PDF");
    comparing.option("--paper SIZE", made->paper,
                     "a4, a3, a5 or letter; unless named, the setting 'paper'");
    comparing.flag("--replace", made->replace, "Write over a file that is there");
    const auto points = std::make_shared<HeadPointsOptions>();
    auto setting = commands.add(
        {"head-points", "Says where the head stands in a photo, so that heads stand equally large.",
         "qturn head-points IMG_0412.jpg --top 48,12.5 --bottom 50,61"},
        [points](Session& session) { return head_points(session, *points); });
    setting.argument("PHOTO", points->photo, "File name, number or checksum");
    setting.option("--top X,Y", points->top,
                   "The top of the hair, in per cent across and down, the right way round");
    setting.option("--bottom X,Y", points->bottom, "The chin, or the nape where no face shows");
    setting.flag("--find", points->find, "Leave it to the program again");
}

}  // namespace quarterturn
