#include "app/qturn/as_made_reply.h"

#include <cmath>
#include <locale>
#include <numbers>
#include <sstream>

#include "app/qturn/empty_party.h"
#include "app/qturn/names.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"

namespace quarterturn {
namespace {

using nlohmann::json;

json number_or_null(const auto& id) {
    return id ? json(id->value) : json();
}

json moment_json(const Photo& photo) {
    return photo.moment ? json(iso_text(*photo.moment)) : json();
}

json side_json(const std::optional<Photo>& photo) {
    if (!photo) return {};
    json side = short_json(*photo);
    side["moment"] = moment_json(*photo);
    return side;
}

double rounded(double value) {
    constexpr double places = 1e4;
    return std::round(value * places) / places;
}

json point_json(const PicturePoint& point) {
    return {{"x", rounded(point.x)}, {"y", rounded(point.y)}};
}

json points_json(const HeadPoints& points) {
    return {{"top", point_json(points.top)}, {"bottom", point_json(points.bottom)}};
}

json alignment_json(const LaidPair& laid) {
    const HeadAlignment& alignment = laid.alignment;
    return {{"scale", rounded(alignment.second_onto_first.scale())},
            {"turn_degrees", rounded(alignment.second_onto_first.turn() * 180 / std::numbers::pi)},
            {"agreement", rounded(alignment.agreement)},
            {"sure", alignment.sure()},
            {"by_hand", alignment.by_hand},
            {"agreed_points", points_json(laid.first_points)},
            {"made_points", points_json(laid.second_points)}};
}

std::string percent_text(double share) {
    std::ostringstream text;
    text.imbue(std::locale::classic());
    text << std::round(share * 1000) / 10;
    return text.str();
}

// The pairs of all looks, in words and as JSON.
class AsMadeReply {
  public:
    AsMadeReply(Library& library, Decoder& decoder) : library_(library), decoder_(decoder) {}

    void add(const ClientAsMade& client, const LookAsMade& look) {
        reply_.lines.push_back(client.client.name + ", " + look.look.name +
                               (look.signed_at ? "" : " (not signed off)"));
        json data{{"client", client.client.name},
                  {"client_id", client.client.id.value},
                  {"look", look.look.name},
                  {"look_id", look.look.id.value},
                  {"signed_at", look.signed_at ? json(iso_text(*look.signed_at)) : json()},
                  {"pairs", json::array()},
                  {"hints", look.hints},
                  {"changes", json::array()}};
        for (const AgreedPair& pair : look.pairs) data["pairs"].push_back(pair_json(pair));
        for (const std::string& hint : look.hints) reply_.lines.push_back("  " + hint);
        for (const ToldChange& change : look.changes) {
            reply_.lines.push_back("  changed since sign-off: " + change.what);
            data["changes"].push_back(
                {{"what", change.what}, {"was", change.was}, {"is", change.is}});
        }
        looks_.push_back(data);
    }

    Reply finish(const Wedding& wedding) {
        reply_.data["wedding"] = wedding.name;
        reply_.data["wedding_id"] = wedding.id.value;
        reply_.data["looks"] = looks_;
        if (looks_.empty() && !wedding.party.empty()) {
            reply_.lines.emplace_back("This wedding has no looks yet.");
        }
        tell_empty_party(reply_, wedding);
        return reply_;
    }

  private:
    json pair_json(const AgreedPair& pair) {
        json data{{"angle", word(pair.angle)},    {"agreed", side_json(pair.agreed)},
                  {"made", side_json(pair.made)}, {"alignment", json()},
                  {"accessory_move", json()},     {"hints", json::array()}};
        std::string line = "  " + std::string(word(pair.angle)) + ": ";
        if (pair.both()) {
            line += pair.agreed->file.name + " and " + pair.made->file.name;
            lay(pair, data, line);
        } else if (pair.agreed) {
            line += "no photo of the day";
        } else if (pair.made) {
            line += "no photo from before the day";
        } else {
            line += "no photo";
        }
        reply_.lines.push_back(line);
        append(reply_.lines, std::exchange(hints_, {}));
        return data;
    }

    void lay(const AgreedPair& pair, json& data, std::string& line) {
        const LaidPair laid = lay_pair(library_, decoder_, finder_, *pair.agreed, *pair.made);
        if (!laid.refused.empty()) {
            line += ": " + laid.refused;
            reply_.outcome = Outcome::needs_attention;
            return;
        }
        data["alignment"] = alignment_json(laid);
        if (const auto& move = laid.accessory.move) {
            data["accessory_move"] = {{"right_cm", rounded(move->right)},
                                      {"higher_cm", rounded(move->higher)}};
        }
        data["hints"] = hint_words(laid);
        for (const std::string& hint : hint_words(laid)) hints_.push_back("    " + hint);
        if (laid.alignment.sure()) return;
        line += ": the heads may not lie right upon each other; set them with head-points";
        reply_.outcome = Outcome::needs_attention;
    }

    Library& library_;
    Decoder& decoder_;
    HeadFinder finder_;
    Reply reply_;
    std::vector<std::string> hints_;  // of the pair at hand
    json looks_ = json::array();
};

}  // namespace

Reply day_photos_reply(Library& library, const Wedding& wedding,
                       const std::vector<DayProposal>& proposals) {
    const Names names(library);
    Reply reply;
    reply.data = {
        {"wedding", wedding.name}, {"wedding_id", wedding.id.value}, {"photos", json::array()}};
    std::vector<std::vector<std::string>> rows;
    for (const DayProposal& each : proposals) {
        const std::string angle = each.angle ? std::string(word(*each.angle)) : "";
        rows.push_back({each.photo.file.name, clock_text(*each.photo.moment),
                        each.look ? names.look(*each.look) : "nobody's", angle});
        json data = short_json(each.photo);
        data["moment"] = moment_json(each.photo);
        data["look"] = each.look ? json(names.look(*each.look)) : json();
        data["look_id"] = number_or_null(each.look);
        data["angle"] = each.angle ? json(angle) : json();
        data["angle_told"] = each.angle_told;
        reply.data["photos"].push_back(data);
        if (!each.look) reply.outcome = Outcome::needs_attention;
    }
    reply.lines = columns(rows);
    if (rows.empty() && !wedding.party.empty()) {
        reply.lines.emplace_back("No photo of the wedding's day waits for a look.");
    }
    tell_empty_party(reply, wedding);
    return reply;
}

Reply as_made_reply(Library& library, Decoder& decoder, const WeddingAsMade& made) {
    AsMadeReply reply(library, decoder);
    for (const ClientAsMade& client : made.clients) {
        for (const LookAsMade& look : client.looks) reply.add(client, look);
    }
    return reply.finish(made.wedding);
}

Reply head_points_reply(const Photo& photo, const std::optional<HeadPoints>& points) {
    Reply reply;
    reply.data = {{"photo", short_json(photo)}, {"points", points ? points_json(*points) : json()}};
    if (!points) {
        reply.lines.push_back(photo.file.name + ": the head is found by the program.");
        return reply;
    }
    const auto said = [](const PicturePoint& point) {
        return percent_text(point.x) + " % across and " + percent_text(point.y) + " % down";
    };
    reply.lines.push_back(photo.file.name + ": top of the hair " + said(points->top) +
                          ", chin or nape " + said(points->bottom) + ".");
    return reply;
}

}  // namespace quarterturn
