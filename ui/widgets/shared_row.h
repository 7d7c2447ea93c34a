#pragma once

#include <QLayout>
#include <memory>
#include <vector>

namespace quarterturn {

// Lays its parts beside each other, each as wide as its share, as long as none gets less than it
// needs; else one below the other, each as wide as there is room.
class SharedRow : public QLayout {
    Q_OBJECT
  public:
    explicit SharedRow(int gap, QWidget* parent = nullptr);
    ~SharedRow() override;

    void add(QWidget* part, int share);

    void addItem(QLayoutItem* item) override;  // with a share of one
    int count() const override { return static_cast<int>(parts_.size()); }
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize minimumSize() const override;
    QSize sizeHint() const override;
    void setGeometry(const QRect& area) override;

  private:
    struct Part {
        std::unique_ptr<QLayoutItem> item;
        int share = 1;
    };
    // Of those that are seen, in a row so wide; empty where they do not fit into one.
    std::vector<int> widths_in(int width) const;
    std::vector<QLayoutItem*> seen() const;
    int arrange(const QRect& area, bool move) const;  // answers the height

    std::vector<Part> parts_;
    int gap_;
};

}  // namespace quarterturn
