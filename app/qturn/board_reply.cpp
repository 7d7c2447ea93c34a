#include "app/qturn/board_reply.h"

#include "app/qturn/empty_party.h"
#include "app/qturn/say.h"
#include "indexer/looks/board_words.h"

namespace quarterturn {
namespace {

using nlohmann::json;

json photos_json(const std::vector<Photo>& photos) {
    json ids = json::array();
    for (const Photo& photo : photos) ids.push_back(photo.id.value);
    return ids;
}

json shots_json(const std::vector<BoardShot>& shots) {
    json list = json::array();
    for (const BoardShot& shot : shots) {
        list.push_back({{"angle", word(shot.angle)},
                        {"photo_id", shot.photo ? json(shot.photo->id.value) : json()},
                        {"empty", shot.empty}});
    }
    return list;
}

json steps_json(const std::vector<BoardStep>& steps) {
    json list = json::array();
    for (const BoardStep& step : steps) {
        list.push_back(
            {{"number", list.size() + 1},
             {"words", step.words},
             {"done", step.done},
             {"pins", step.pins},
             {"clips", step.clips},
             {"waiting_minutes", step.waiting_minutes ? json(*step.waiting_minutes) : json()},
             {"waits_for", step.waits_for},
             {"cautions", step.cautions},
             {"photo_ids", photos_json(step.photos)}});
    }
    return list;
}

json parts_json(const std::vector<RecipePart>& parts) {
    json list = json::array();
    for (const RecipePart& part : parts) {
        list.push_back({{"heading", part.heading}, {"lines", part.lines}});
    }
    return list;
}

json look_json(const BoardLook& look) {
    return {{"look", look.state.look.name},
            {"look_id", look.state.look.id.value},
            {"worn", word(look.state.look.worn)},
            {"signed", look.state.sign_off.has_value()},
            {"standing", look.standing},
            {"changes", look.changes},
            {"shots", shots_json(look.shots)},
            {"before_build", parts_json(look.before_build)},
            {"steps", steps_json(look.steps)},
            {"after_build", parts_json(look.after_build)},
            {"pins", look.pins()},
            {"pins_in", look.pins_in()}};
}

json seats_json(const std::vector<Seat>& seats) {
    json list = json::array();
    for (const Seat& seat : seats) {
        list.push_back({{"stylist", seat.stylist + 1},
                        {"begins", minute_text(seat.begins)},
                        {"ends", minute_text(seat.ends)}});
    }
    return list;
}

json client_json(const BoardClient& client) {
    json looks = json::array();
    for (const BoardLook& look : client.looks) looks.push_back(look_json(look));
    return {{"client", client.client.name}, {"client_id", client.client.id.value},
            {"role", client.role},          {"ready_by", client.ready_by},
            {"done", client.is_done()},     {"seats", seats_json(client.seats)},
            {"cautions", client.cautions},  {"looks", looks}};
}

json board_json(const WeddingBoard& board) {
    json clients = json::array();
    for (const BoardClient& client : board.clients) clients.push_back(client_json(client));
    return {{"wedding", board.wedding.name},
            {"wedding_id", board.wedding.id.value},
            {"date", iso_text(board.wedding.date)},
            {"clients", clients},
            {"remarks", board.remarks}};
}

std::string in_brackets(const BoardStep& step) {
    std::vector<std::string> words;
    for (const std::string& each : {pins_count_text(step), wait_text(step)}) {
        if (!each.empty()) words.push_back(each);
    }
    return words.empty() ? "" : "  [" + joined(words) + "]";
}

void add_look(Reply& reply, const BoardLook& look) {
    reply.lines.push_back("  " + look.state.look.name + ", " +
                          std::string(word(look.state.look.worn)) + ". " + look.standing);
    for (const std::string& change : look.changes) reply.lines.push_back("    since: " + change);
    for (const BoardShot& shot : look.shots) {
        if (!shot.photo) reply.lines.push_back("    " + shot.empty);
    }
    for (std::size_t i = 0; i < look.steps.size(); ++i) {
        const BoardStep& step = look.steps[i];
        reply.lines.push_back((step.done ? "    [x]  " : "    [ ]  ") + std::to_string(i + 1) +
                              ". " + step.words + in_brackets(step));
        for (const std::string& caution : step.cautions) {
            reply.lines.push_back("         ! " + caution);
        }
    }
    const std::string pins = all_pins_text(look);
    if (!pins.empty()) reply.lines.push_back("    " + pins);
    if (look.recipe() == nullptr) reply.lines.emplace_back("    No recipe is written yet.");
}

void add_client(Reply& reply, const WeddingBoard& board, const BoardClient& client) {
    std::string line = client.client.name;
    if (!client.role.empty()) line += ", " + client.role;
    reply.lines.push_back(line + ", " + ready_text(client));
    const std::string chair = chair_text(board, client);
    if (!chair.empty()) reply.lines.push_back("  " + chair + ".");
    for (const std::string& caution : client.cautions) reply.lines.push_back("  ! " + caution);
    for (const BoardLook& look : client.looks) add_look(reply, look);
    if (client.looks.empty()) reply.lines.emplace_back("  No look for this wedding yet.");
    if (client.is_done()) reply.lines.emplace_back("  She is done.");
}

}  // namespace

Reply board_reply(const WeddingBoard& board) {
    Reply reply{{"The board of " + board.wedding.name + ", " + iso_text(board.wedding.date) + "."},
                board_json(board)};
    for (const BoardClient& client : board.clients) add_client(reply, board, client);
    append(reply.lines, board.remarks);
    if (!board.remarks.empty()) reply.outcome = Outcome::needs_attention;
    tell_empty_party(reply, board.wedding);
    return reply;
}

}  // namespace quarterturn
