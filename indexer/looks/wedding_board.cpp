#include "indexer/looks/wedding_board.h"

#include <algorithm>
#include <limits>
#include <stdexcept>

#include "indexer/store/done_table.h"
#include "indexer/store/some_records.h"

namespace quarterturn {
namespace {

constexpr const char* nothing_noted =
    "No allergies or tender spots are noted. Ask before starting.";

std::vector<Look> looks_for(Library& library, WeddingId wedding) {
    std::vector<Look> looks = library.looks().all();
    std::erase_if(looks, [&](const Look& look) { return look.wedding != wedding; });
    const auto rank = [](const Look& look) {
        return look.worn == Worn::ceremony ? 0 : look.worn == Worn::other ? 1 : 2;
    };
    std::ranges::stable_sort(looks, {}, rank);
    return looks;
}

void add_once(std::vector<std::string>& lines, const std::string& line) {
    if (std::ranges::find(lines, line) == lines.end()) lines.push_back(line);
}

std::vector<std::string> cautions_of(const std::vector<BoardLook>& looks) {
    std::vector<std::string> cautions;
    for (const BoardLook& look : looks) {
        if (look.recipe() == nullptr) continue;
        for (const std::string& line : caution_lines(*look.recipe())) add_once(cautions, line);
    }
    if (cautions.empty()) cautions.emplace_back(nothing_noted);
    return cautions;
}

std::string ready_by(const WeddingMorning& morning, ClientId client) {
    const auto wish = std::ranges::find(morning.morning.wishes, client, &MorningWish::client);
    if (wish != morning.morning.wishes.end() && wish->ready_by) return minute_text(*wish->ready_by);
    return morning.wedding.ready_by;
}

class BoardGatherer {
  public:
    BoardGatherer(Library& library, WeddingId wedding)
        : library_(library),
          morning_(wedding_morning(library, wedding)),
          looks_(looks_for(library, wedding)),
          done_(DoneTable(library.database()).of_wedding(wedding)) {}

    WeddingBoard gather() {
        board_.wedding = morning_.wedding;
        board_.remarks = morning_.cannot;
        plan();
        for (const PartyMember& member : board_.wedding.party) add(member.client);
        for (const Look& look : looks_) {
            if (std::ranges::count(board_.clients, look.client, &client_id) == 0) add(look.client);
        }
        std::ranges::stable_sort(board_.clients, {}, [](const BoardClient& client) {
            return client.seats.empty() ? std::numeric_limits<int>::max()
                                        : client.seats.front().begins;
        });
        return std::move(board_);
    }

  private:
    static ClientId client_id(const BoardClient& client) { return client.client.id; }

    void plan() {
        if (morning_.needs.clients.empty()) return;
        try {
            seats_ = plan_of(morning_).seats;
        } catch (const std::invalid_argument& cannot) {
            board_.remarks.emplace_back(cannot.what());
        }
    }

    void add(ClientId id) {
        BoardClient client;
        client.client = library_.clients().find(id).value_or(Client{id, {}, {}});
        client.role = role_in(board_.wedding, id);
        client.ready_by = ready_by(morning_, id);
        for (const Seat& seat : seats_) {
            if (seat.client == id) client.seats.push_back(seat);
        }
        std::ranges::sort(client.seats, {}, &Seat::begins);
        for (const Look& look : looks_) {
            if (look.client != id) continue;
            client.looks.push_back(board_look(library_, board_.wedding.id, look.id));
        }
        client.cautions = cautions_of(client.looks);
        client.said_done = std::ranges::find(done_, id) != done_.end();
        board_.clients.push_back(std::move(client));
    }

    Library& library_;
    WeddingMorning morning_;
    std::vector<Look> looks_;
    std::vector<ClientId> done_;
    std::vector<Seat> seats_;
    WeddingBoard board_;
};

}  // namespace

std::size_t BoardClient::steps_done() const {
    if (looks.empty()) return 0;
    return static_cast<std::size_t>(
        std::ranges::count(looks.front().steps, true, &BoardStep::done));
}

bool BoardClient::is_done() const {
    return steps() == 0 ? said_done : steps_done() == steps();
}

WeddingBoard wedding_board(Library& library, WeddingId wedding) {
    return BoardGatherer(library, wedding).gather();
}

void keep_only(WeddingBoard& board, ClientId client) {
    std::erase_if(board.clients, [&](const BoardClient& each) { return each.client.id != client; });
    board.remarks.clear();
}

std::optional<WeddingId> wedding_of(Library& library, Date day) {
    const Date next = std::chrono::sys_days(day) + std::chrono::days(1);
    const auto weddings = SomeRecords(library.database()).weddings_on({.first = day, .end = next});
    if (weddings.empty()) return std::nullopt;
    const auto earliest = std::ranges::min_element(weddings, {}, [](const Wedding& wedding) {
        return parse_minute(wedding.ready_by).value_or(std::numeric_limits<int>::max());
    });
    return earliest->id;
}

}  // namespace quarterturn
