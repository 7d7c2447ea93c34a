#pragma once

#include "ui/portfolio_screen/shown_candidates.h"
#include "ui/widgets/shelf_view.h"

namespace quarterturn {

class Session;

// The candidates as pictures, each with what it still lacks below. Return or a double click puts
// one into the selection, or takes it out.
class CandidateShelves : public ShelfView {
    Q_OBJECT
  public:
    CandidateShelves(Session& session, ShownCandidates& candidates, QWidget* parent = nullptr);

  signals:
    void looked_at(quarterturn::PhotoId photo);
    void toggled(quarterturn::PhotoId photo);

  protected:
    void arrange(ShelfLayout& layout) const override;
    void paint_heading(QPainter& painter, int shelf, const QRect& area) const override;
    void paint_tile(QPainter& painter, int position, const QRect& area) const override;
    void want_what_is_seen() override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

  private:
    std::vector<int> counts() const;

    Session& session_;
    ShownCandidates& candidates_;
};

}  // namespace quarterturn
