#pragma once

#include <QWidget>
#include <vector>

#include "indexer/looks/coming_up.h"

class QLineEdit;
class QVBoxLayout;

namespace quarterturn {

class Session;

// What is past, by month, the newest first. Months are closed until she opens one or searches; only
// what is open is judged and built.
class PastList : public QWidget {
    Q_OBJECT
  public:
    explicit PastList(Session& session, QWidget* parent = nullptr);

    // `newest_open`: the newest month is opened by itself, once.
    void show_past(std::vector<Occasion> past, bool newest_open);

  signals:
    void changed();  // one of the past occasions was

  private:
    using Month = std::chrono::year_month;

    void rebuild();
    void add_month(Month month, const std::vector<const Occasion*>& occasions, bool open);
    void toggle_month(Month month);
    bool matches(const Occasion& occasion) const;

    Session& session_;
    std::vector<Occasion> past_;
    std::vector<Month> open_;
    bool newest_was_opened_ = false;
    QLineEdit* search_;
    QVBoxLayout* months_;
};

}  // namespace quarterturn
