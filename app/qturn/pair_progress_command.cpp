#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/looks/pair_frames.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct ProgressOptions {
    std::string client;
    Text angle;
};

std::vector<std::string> frame_cells(const ProgressFrame& frame) {
    const Photo& photo = frame.photo;
    return {std::string(word(*photo.tags.angle)),
            photo.moment ? iso_text(date_of(*photo.moment)) : "day unknown",
            frame.sitting ? std::string(word(*frame.sitting)) : "no sitting",
            std::string(word(*photo.tags.stage)), photo.file.name};
}

json frame_json(const ProgressFrame& frame) {
    json data = short_json(frame.photo);
    data["taken"] = frame.photo.moment ? json(iso_text(*frame.photo.moment)) : json();
    data["sitting_kind"] = frame.sitting ? json(word(*frame.sitting)) : json();
    data["stage"] = word(*frame.photo.tags.stage);
    return data;
}

Reply progress(Session& session, const ProgressOptions& options) {
    Library& library = session.library();
    const Client client = find_client(library, options.client);
    auto by_angle = progress_of(library, client.id);
    if (options.angle) {
        const Angle only = angle_from(*options.angle);
        std::erase_if(by_angle, [&](const auto& each) { return each.first != only; });
    }
    std::vector<std::vector<std::string>> rows;
    json angles = json::object();
    for (const auto& [angle, frames] : by_angle) {
        json list = json::array();
        for (const ProgressFrame& frame : frames) {
            rows.push_back(frame_cells(frame));
            list.push_back(frame_json(frame));
        }
        angles[std::string(word(angle))] = list;
    }
    if (rows.empty()) {
        return {{"No usable photo is tagged with stage and angle: tag some with qturn tag."},
                {{"client_id", client.id.value}, {"angles", angles}}};
    }
    return {columns(rows), {{"client_id", client.id.value}, {"angles", angles}}};
}

}  // namespace

void add_pair_progress_command(CommandSet& commands) {
    const auto options = std::make_shared<ProgressOptions>();
    auto command =
        commands.add({"pairs progress", "Shows a client across her sittings, angle by angle.",
                      "qturn pairs progress 'Mira Okonjo-Lindqvist' --angle back"},
                     [options](Session& session) { return progress(session, *options); });
    command.argument("CLIENT", options->client, "Name or number");
    command.option("--angle ANGLE", options->angle, "From there alone");
}

}  // namespace quarterturn
