#pragma once

#include <QWidget>
#include <map>
#include <optional>
#include <vector>

#include "indexer/looks/coming_up.h"

class QLineEdit;
class QPushButton;
class QTimer;
class QVBoxLayout;

namespace quarterturn {

class OccasionCard;
class Session;

// What is past, by month, the newest first. Months are closed until she opens one or searches; only
// what is open is read, judged and built.
class PastList : public QWidget {
    Q_OBJECT
  public:
    explicit PastList(Session& session, QWidget* parent = nullptr);

    // `newest_open`: the newest month is opened by itself, once.
    void show_past(std::vector<MonthCount> past, Date today, bool newest_open);

  signals:
    void changed();  // one of the past occasions was

  protected:
    void keyPressEvent(QKeyEvent* event) override;  // Escape: all that is past again

  private:
    using Month = std::chrono::year_month;

    QString wanted() const;  // the name she searches for
    void rebuild();
    void make_room();
    void show_what_is_found();
    void show_months();
    void show_found();
    void add_month(const MonthCount& month, bool open);
    QPushButton* head_of(Month month);
    void add_cards(std::vector<Occasion> occasions);
    OccasionCard* card_of(const Occasion& occasion);
    void toggle_month(Month month);
    bool is_open(Month month) const;
    std::vector<Occasion> occasions_of(Month month) const;
    std::vector<Occasion> found();

    Session& session_;
    std::vector<MonthCount> past_;
    Date today_{};
    std::optional<std::vector<Occasion>> everything_;  // as read for the first search
    std::vector<Month> open_;
    bool all_shown_ = false;
    bool newest_was_opened_ = false;
    QLineEdit* search_;
    QTimer* typing_;
    QVBoxLayout* months_;
    std::map<Month, QPushButton*> heads_;
    QList<QWidget*> before_;  // what was shown and may be shown again, while it is laid out anew
};

}  // namespace quarterturn
