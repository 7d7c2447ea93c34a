#pragma once

#include <QWidget>
#include <vector>

#include "indexer/looks/coming_up.h"

class QVBoxLayout;

namespace quarterturn {

class OccasionCard;
class Session;

// What lies ahead, a card each. A card of which nothing has changed stays. Those that do not fit
// into the window at first are judged and made after it is there.
class AheadList : public QWidget {
    Q_OBJECT
  public:
    explicit AheadList(Session& session, QWidget* parent = nullptr);

    void show_ahead(std::vector<Occasion> ahead, Date today);

  signals:
    void changed();    // one of them was
    void all_shown();  // none waits any longer

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    std::size_t count_at_once() const;
    void judge_next(std::size_t count);
    OccasionCard* take_card_of(const Occasion& occasion);
    OccasionCard* make_card_of(const Occasion& occasion);
    void let_go_of_cards();
    void add_those_waiting();

    Session& session_;
    std::vector<Occasion> ahead_;
    std::size_t judged_ = 0;  // so many of the first of them
    Date today_{};
    std::vector<OccasionCard*> cards_;  // of the first of them; the others wait
    bool some_wait_ = false;            // until the first have been painted
    QVBoxLayout* column_;
};

}  // namespace quarterturn
