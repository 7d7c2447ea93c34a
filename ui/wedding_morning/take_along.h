#pragma once
// The board on paper and on a phone, and the take-down card: what goes along without the laptop.

#include "indexer/looks/wedding_board.h"
#include "ui/printing/ways_out.h"

namespace quarterturn {

enum class TakenAlong { print, pdf, large_pdf, phone_page, phone_page_of_client, take_down_card };

inline constexpr std::array all_taken_along{TakenAlong::print,
                                            TakenAlong::pdf,
                                            TakenAlong::large_pdf,
                                            TakenAlong::phone_page,
                                            TakenAlong::phone_page_of_client,
                                            TakenAlong::take_down_card};

QString shown(TakenAlong what);  // "Save for A4 paper…"

// What of the board it is about.
struct TakenFrom {
    Wedding wedding;
    Client client;
    std::optional<LookId> look;
};

class TakeAlong : public QObject {
    Q_OBJECT
  public:
    // `window` owns it; what became of it is said in `notice`.
    TakeAlong(Session& session, Notice& notice, QWidget& window);

    void take(TakenAlong what, const TakenFrom& from);

    void save_board(const TakenFrom& from, Paper paper, const Path& file);
    void save_phone_page(WeddingId wedding, std::optional<ClientId> client, const Path& file);
    void save_card(LookId look, const Path& file);

  private:
    std::optional<Path> ask_pdf(const QString& title, const std::string& name);
    void ask_phone_page(const TakenFrom& from, bool of_client);
    void ask_card(const TakenFrom& from);
    void print(const TakenFrom& from);

    Session& session_;
    Notice& notice_;
    WaysOut* ways_;
};

}  // namespace quarterturn
